// @ts-check
// The text of the manuscript as flat lines: one <div> a line, so that every line has a place to hang a remark on.

export const MANY = 3000; // lines beyond which a text is long
const STRETCH = 100; // lines that are drawn together in a long text; the style sheet reckons with as many

/** All text under a node, lines separated by newlines, whatever the browser made of a paste. @param {Node} root @returns {string} */
export function readText(root) {
  let out = '';
  let fresh = true; // at the start of a line that has been counted and holds nothing yet
  let ended = false; // a block has closed: whatever comes next begins a line
  const inline = () => { if (ended) out += '\n'; ended = false; fresh = false; };
  /** @param {Node} n */
  const walk = (n) => {
    for (const c of n.childNodes) {
      if (c.nodeType === Node.TEXT_NODE) { inline(); out += c.nodeValue; }
      else if (c.nodeName === 'BR') { inline(); if (c.nextSibling || n === root) { out += '\n'; fresh = true; } }
      else if (c.nodeName === 'DIV' || c.nodeName === 'P') {
        if (!fresh) out += '\n';
        fresh = true;
        ended = false;
        walk(c);
        fresh = false;
        ended = true;
      } else walk(c);
    }
  };
  walk(root);
  return out.replaceAll('\u00a0', ' ').replaceAll('\r', '');
}

/** True for a box that holds a stretch of a long text. @param {Node|null} n */
const isGroup = (n) => n instanceof HTMLElement && n.classList.contains('g');

/** True when a child of the text is one line: a box with text, or with the one break an empty line holds. @param {Node} n */
function isLine(n) {
  if (n.nodeName !== 'DIV' || isGroup(n)) return false;
  for (const g of n.childNodes) if (g.nodeType !== Node.TEXT_NODE && !(g.nodeName === 'BR' && n.childNodes.length === 1)) return false;
  return true;
}

/** True for a line, or for a stretch of nothing else. @param {Node} n */
export function isPart(n) { return isGroup(n) ? n.childNodes.length > 0 && Array.from(n.childNodes).every(isLine) : isLine(n); }

/** True when every child is one line, or a stretch of them. @param {HTMLElement} root */
export function isFlat(root) {
  for (const c of root.childNodes) if (!isPart(c)) return false;
  return root.childNodes.length > 0;
}

/** True when the text is so long that it stands in stretches. @param {HTMLElement} root */
export function isGrouped(root) { return isGroup(root.firstElementChild); }

/** Every line. @param {HTMLElement} root @returns {Element[]} */
export function linesOf(root) { return Array.from(root.children, (c) => (isGroup(c) ? Array.from(c.children) : [c])).flat(); }

/** The line with a number from 0, the last when there are fewer. @param {HTMLElement} root @param {number} n @returns {Element|null} */
export function lineAt(root, n) {
  if (!isGrouped(root)) return root.children[Math.max(0, Math.min(n, root.childElementCount - 1))] ?? null;
  for (const c of root.children) {
    const many = isGroup(c) ? c.childElementCount : 1;
    if (n < many || c === root.lastElementChild) return isGroup(c) ? c.children[Math.max(0, Math.min(n, many - 1))] : c;
    n -= many;
  }
  return null;
}

/** The line, or what a browser put in the place of one, that a node stands in. @param {HTMLElement} root @param {Node|null} n @returns {Node|null} */
export function lineOf(root, n) {
  while (n && n.parentNode !== root && !(isGroup(n.parentNode) && n.parentNode?.parentNode === root)) n = n.parentNode;
  return n;
}

/** The text of flat lines, quickly. @param {HTMLElement} root @returns {string[]} */
export function flatLines(root) {
  return linesOf(root).map((c) => (c.textContent ?? '').replaceAll('\u00a0', ' '));
}

/** Sets the text. Many lines stand in stretches, of which the browser draws only those that are seen. @param {HTMLElement} root @param {string} text */
export function writeText(root, text) {
  const all = document.createDocumentFragment();
  const lines = text.replaceAll('\r\n', '\n').replaceAll('\r', '\n').split('\n');
  /** @type {Node} */ let into = all;
  lines.forEach((line, i) => {
    if (lines.length > MANY && i % STRETCH === 0) {
      const g = document.createElement('div');
      g.className = 'g';
      all.append(into = g);
    }
    const d = document.createElement('div');
    if (line) d.textContent = line; else d.append(document.createElement('br'));
    into.appendChild(d);
  });
  root.replaceChildren(all);
}

/** Where the caret stands, in characters from the start. @param {HTMLElement} root @returns {number|null} */
export function caret(root) {
  const s = document.getSelection();
  if (!s || s.rangeCount === 0 || !root.contains(s.focusNode)) return null;
  const r = document.createRange();
  r.setStart(root, 0);
  r.setEnd(/** @type {Node} */ (s.focusNode), s.focusOffset);
  const box = document.createElement('div');
  box.append(r.cloneContents());
  return readText(box).length;
}

/** Puts the caret at a character of flat lines. @param {HTMLElement} root @param {number} at */
export function setCaret(root, at) {
  let left = at;
  for (const line of linesOf(root)) {
    const n = (line.textContent ?? '').length;
    if (left <= n) {
      const s = document.getSelection();
      const t = line.firstChild?.nodeType === Node.TEXT_NODE ? line.firstChild : line;
      s?.collapse(t, t === line ? 0 : left);
      return;
    }
    left -= n + 1;
  }
}
