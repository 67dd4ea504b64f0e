"use strict";
// Finds the parts of the guide that hold every typed word, or else the nearest words that stand
// there, or else some of them. Without it the full list stays; the small server does the same by itself.
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
      .replace(/['’]/g, "")
      .normalize("NFD")
      .replace(/\p{M}/gu, "")
      .replace(/([aou])e/g, "$1");
  const worths = { title: 6, also: 5, part: 3, text: 1 };
  const split = (text) => text.match(/[\p{L}\p{N}]+/gu) ?? [];
  const spaced = (text) => ` ${split(folded(text)).join(" ")} `;
  const entries = index.map((entry) => [
    entry,
    Object.keys(worths).map((key) => [spaced(entry[key] ?? ""), worths[key]]),
  ]);
  // A word as it stands counts most, then the beginning of another, then what stands within one.
  const fit = (text, word) => {
    if (text.includes(` ${word}`)) return text.includes(` ${word} `) ? 4 : 3;
    return word.length > 3 && text.includes(word) ? 1 : 0;
  };
  const worth = (told, word) => told.reduce((sum, [text, each]) => sum + each * fit(text, word), 0);

  // How many slips of a key lie between two words: a letter too few, too many, other or swapped.
  const slips = (one, other) => {
    const rows = [[...Array(other.length + 1).keys()]];
    for (let i = 1; i <= one.length; i++) {
      rows[i] = [i];
      for (let j = 1; j <= other.length; j++) {
        const same = one[i - 1] === other[j - 1] ? 0 : 1;
        rows[i][j] = Math.min(rows[i - 1][j] + 1, rows[i][j - 1] + 1, rows[i - 1][j - 1] + same);
        if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1])
          rows[i][j] = Math.min(rows[i][j], rows[i - 2][j - 2] + 1);
      }
    }
    return rows[one.length][other.length];
  };
  const known = [
    ...new Set(entries.flatMap(([, told]) => told.flatMap(([text]) => split(text)))),
  ].filter((word) => word.length > 3);
  // One of what was typed as many, where that is a word: screens are found by a screen.
  const single = (word) => {
    const one = word.replace(/s$/, "");
    return one.length > 3 && known.includes(one) ? one : word;
  };
  const nearest = (word) => {
    if (word.length < 4 || known.some((other) => other.includes(word))) return word;
    // An ending is left off where what is left is a word.
    for (let left = 1; left <= 3 && word.length - left > 3; left++)
      if (known.includes(word.slice(0, -left))) return word.slice(0, -left);
    let least = word.length < 8 ? 1 : 2;
    let best = word;
    for (const other of known) {
      if (Math.abs(other.length - word.length) > least) continue;
      const far = slips(word, other);
      if (far < least || (far === least && best === word)) [least, best] = [far, other];
    }
    return best;
  };
  // What it counts that people look for an entry by several words, side by side.
  const sought = ([, [also, each]], words) => (words.includes(" ") ? each * fit(also, words) : 0);
  const hitsOf = (words) =>
    entries
      .map(([entry, told]) => [entry, told, words.map((word) => worth(told, word))])
      .filter(([, , found]) => words.length && found.every(Boolean))
      .map(([entry, told, found]) => [
        entry,
        found.reduce((a, b) => a + b) + sought(told, words.join(" ")),
      ])
      .sort((a, b) => b[1] - a[1])
      .slice(0, 20);

  // What holds some of the words, or is looked for by two side by side: the rarest count most.
  const someHitsOf = (words) => {
    const sums = new Map();
    const add = (worthOf) => {
      const held = entries.map((one) => [one, worthOf(one[1])]).filter(([, each]) => each);
      for (const [[entry], each] of held)
        sums.set(entry, (sums.get(entry) ?? 0) + Math.sqrt(each) / held.length);
    };
    for (const word of words) if (word.length > 2) add((told) => worth(told, word));
    words.slice(1).forEach((word, at) => {
      add((told) => sought(told, `${words[at]} ${word}`));
    });
    return [...sums].sort((a, b) => b[1] - a[1]).slice(0, 20);
  };

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
    const held = words.find((word) => folded(entry.text).includes(word)) ?? words[0];
    text.textContent = around(entry.text, held);
    const li = document.createElement("li");
    li.append(link, text);
    return li;
  };

  const search = () => {
    let words = split(folded(field.value)).map(single);
    // Of a sentence no page need hold all words.
    const whole = (some) => (some.length < 4 ? hitsOf(some) : []);
    let hits = whole(words);
    if (!hits.length && words.length) {
      words = words.map(nearest);
      hits = whole(words);
      if (!hits.length) hits = someHitsOf(words);
    }
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
