"use strict";
self.noonstoneFiles = "names";
// Keeps the pages that were opened, and all of them when asked, to be read without a network. What
// is on the network comes first, so that nothing old is shown to who has one. Nothing is asked of
// any other machine.
(() => {
  const KEPT = "noonstone-guide";
  const PATIENCE_MS = 4000;
  const { first, all } = self.noonstoneFiles;

  const at = (name) => new URL(name, self.registration.scope).href;
  const named = (address) => {
    const url = new URL(address);
    url.search = url.hash = "";
    if (url.pathname.endsWith("/")) url.pathname += "index.html";
    return url.href;
  };
  const language = (address) =>
    first.find((name) => name.endsWith("/offline.html") && address.startsWith(at(name.split("/")[0])));
  const instead = async (kept, request) => {
    const found = await kept.match(named(request.url));
    if (found || request.mode !== "navigate") return found;
    return kept.match(at(language(request.url) ?? "offline.html"));
  };
  const late = () => new Promise((_, no) => setTimeout(no, PATIENCE_MS));

  const answer = async (request) => {
    const kept = await caches.open(KEPT);
    const network = fetch(request).then(async (fresh) => {
      if (fresh.ok && !new URL(request.url).search) await kept.put(named(request.url), fresh.clone());
      return fresh;
    });
    try {
      return await Promise.race([network, late()]);
    } catch {
      return (await instead(kept, request)) ?? network;
    }
  };
  const keep = async (names) => {
    const kept = await caches.open(KEPT);
    for (const name of names) {
      const fresh = await fetch(at(name));
      if (!fresh.ok) throw new Error(name);
      await kept.put(at(name), fresh);
    }
  };

  self.addEventListener("install", (event) => {
    event.waitUntil(keep(first).then(() => self.skipWaiting()));
  });
  self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
  self.addEventListener("fetch", (event) => {
    const { request } = event;
    const ours = request.url.startsWith(self.registration.scope);
    if (request.method === "GET" && ours) event.respondWith(answer(request));
  });
  self.addEventListener("message", (event) => {
    const tell = (done) => event.ports[0]?.postMessage(done);
    const names = event.data === "all" ? all : [event.data];
    event.waitUntil(keep(names).then(() => tell(true), () => tell(false)));
  });
})();
