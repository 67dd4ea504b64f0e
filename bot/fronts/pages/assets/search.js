"use strict";
// Finds the parts of the guide that hold every typed word. Without it the full list stays.
(() => {
  const form = document.querySelector("form.find");
  const list = document.querySelector("#found");
  const count = document.querySelector("#count");
  const index = window.noonstoneIndex;
  if (!form || !list || !count || !index) return;

  const field = form.elements.q;
  const worth = (entry, word) =>
    (entry.title.toLowerCase().includes(word) ? 6 : 0) +
    (entry.part.toLowerCase().includes(word) ? 3 : 0) +
    (entry.text.toLowerCase().includes(word) ? 1 : 0);

  const around = (text, word) => {
    const at = Math.max(0, text.toLowerCase().indexOf(word));
    const from = at < 70 ? 0 : text.indexOf(" ", at - 60) + 1;
    const cut = text.slice(from, from + 170);
    const end = from + 170 < text.length ? cut.slice(0, cut.lastIndexOf(" ")) + " …" : cut;
    return (from ? "… " : "") + end;
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
    const words = field.value.toLowerCase().split(/\s+/).filter(Boolean);
    const hits = words.length
      ? index
          .map((entry) => [entry, words.map((word) => worth(entry, word))])
          .filter(([, worths]) => worths.every(Boolean))
          .map(([entry, worths]) => [entry, worths.reduce((a, b) => a + b)])
          .sort((a, b) => b[1] - a[1])
          .slice(0, 20)
      : [];
    list.replaceChildren(...hits.map(([entry]) => item(entry, words)));
    count.textContent = !words.length
      ? ""
      : hits.length
        ? `${hits.length} found`
        : "Nothing found. Try fewer words, or look in the list below.";
  };

  field.value = new URLSearchParams(location.search).get("q") ?? "";
  field.addEventListener("input", search);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    search();
  });
  search();
})();
