// @ts-check
// The text of the manuscript as flat lines: one <div> a line, so that every line has a place to hang a remark on.

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

/** True when a child of the text is one line: a box with text, or with the one break an empty line holds. @param {Node} n */
export function isLine(n) {
  if (n.nodeName !== 'DIV') return false;
  for (const g of n.childNodes) if (g.nodeType !== Node.TEXT_NODE && !(g.nodeName === 'BR' && n.childNodes.length === 1)) return false;
  return true;
}

/** True when every child is one line. @param {HTMLElement} root */
export function isFlat(root) {
  for (const c of root.childNodes) if (!isLine(c)) return false;
  return root.childNodes.length > 0;
}

/** The text of flat lines, quickly. @param {HTMLElement} root @returns {string[]} */
export function flatLines(root) {
  return Array.from(root.children, (c) => (c.textContent ?? '').replaceAll('\u00a0', ' '));
}

/** Sets the text. @param {HTMLElement} root @param {string} text */
export function writeText(root, text) {
  const all = document.createDocumentFragment();
  for (const line of text.replaceAll('\r\n', '\n').replaceAll('\r', '\n').split('\n')) {
    const d = document.createElement('div');
    if (line) d.textContent = line; else d.append(document.createElement('br'));
    all.append(d);
  }
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
  for (const line of root.children) {
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
