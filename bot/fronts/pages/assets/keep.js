"use strict";
// Where the pages lie on a web server: keeps them on this device, and lets them be installed there.
(() => {
  const here = document.currentScript.src;
  if (!("serviceWorker" in navigator) || !isSecureContext || !here.startsWith("http")) return;

  const manifest = document.createElement("link");
  manifest.rel = "manifest";
  manifest.href = "app.webmanifest";
  document.head.append(manifest);

  navigator.serviceWorker.register(new URL("worker.js", here));
  const asked = (what) =>
    navigator.serviceWorker.ready.then(
      ({ active }) =>
        new Promise((done) => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = ({ data }) => done(data);
          active.postMessage(what, [port2]);
        }),
    );
  // The page that brought the worker came before it.
  if (!navigator.serviceWorker.controller && !location.search) asked(location.href);

  const button = document.querySelector("#keep");
  const told = document.querySelector("#kept");
  if (!button || !told) return;
  button.hidden = false;
  button.addEventListener("click", async () => {
    button.disabled = true;
    told.textContent = button.dataset.busy;
    const done = await asked("all");
    told.textContent = done ? button.dataset.done : button.dataset.failed;
    button.disabled = done;
  });
})();
