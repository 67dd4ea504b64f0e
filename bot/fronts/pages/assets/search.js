"use strict";
// Finds the parts of the guide that hold every typed word. Without it the full list stays.
(() => {
  const form = document.querySelector("form.find");
  const list = document.querySelector("#found");
  const count = document.querySelector("#count");
  const index = window.noonstoneIndex;
  if (!form || !list || !count || !index) return;

  const field = form.elements.q;
  // Röhre, roehre and rohre are one word, and so are heiß and heiss.
  const folded = (text) =>
    text
      .toLowerCase()
      .replace(/ß/g, "ss")
      .normalize("NFD")
      .replace(/\p{M}/gu, "")
      .replace(/([aou])e/g, "$1");
  const entries = index.map((entry) => [
    entry,
    folded(entry.title),
    folded(entry.part),
    folded(entry.text),
  ]);
  const worth = (title, part, text, word) =>
    (title.includes(word) ? 6 : 0) + (part.includes(word) ? 3 : 0) + (text.includes(word) ? 1 : 0);

  const around = (text, word) => {
    const told = text.split(" ");
    const from = Math.max(0, told.findIndex((one) => folded(one).includes(word)) - 10);
    const cut = told.slice(from, from + 28).join(" ");
    return (from ? "… " : "") + cut + (from + 28 < told.length ? " …" : "");
  };

  const item = (entry, words) => {
    const link = document.createElement("a");
    link.href = entry.url;
    link.textContent = entry.part ? `${entry.title}: ${entry.part}` : entry.title;
    const text = document.createElement("p");
    text.textContent = around(entry.text, words[0]);
    const li = document.createElement("li");
    li.append(link, text);
    return li;
  };

  const search = () => {
    const words = folded(field.value).split(/\s+/).filter(Boolean);
    const hits = words.length
      ? entries
          .map(([entry, ...told]) => [entry, words.map((word) => worth(...told, word))])
          .filter(([, worths]) => worths.every(Boolean))
          .map(([entry, worths]) => [entry, worths.reduce((a, b) => a + b)])
          .sort((a, b) => b[1] - a[1])
          .slice(0, 20)
      : [];
    list.replaceChildren(...hits.map(([entry]) => item(entry, words)));
    count.textContent = !words.length
      ? ""
      : hits.length
        ? `${count.dataset.found} ${hits.length}`
        : count.dataset.none;
  };

  field.value = new URLSearchParams(location.search).get("q") ?? "";
  field.addEventListener("input", search);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    search();
  });
  search();
})();
