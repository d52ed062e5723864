// @ts-check
import { lineAt, lineOf, linesOf } from './lines.js';

// Marks on the height of their lines. They follow one another in the margin's own flow, so that two can never lie over each other, whatever their heights are by now;
// what is reckoned here is only how much air stands before each. Costs as much as there are marks, not as there are lines.

const GAP = 10; // px between two remarks
const CLOSE = 6; // px between two that stand between the lines
const HEAD = /^#{1,2} /;

/**
 * @param {{root: HTMLElement, left: HTMLElement, right: HTMLElement, headings: number[], long: boolean, dressed: Map<Element, string>}} m `dressed`: lines that were set apart the last time
 * @returns {Map<Element, string>} lines that are set apart now
 */
export function placeMarks({ root, left, right, headings, long, dressed }) {
  const narrow = matchMedia('(max-width: 61.99rem)').matches;
  if (!root.firstElementChild) return new Map();
  /** @type {Map<number, HTMLElement>} */ const found = new Map();
  const of = (/** @type {HTMLElement} */ e) => {
    const n = Number(e.dataset.line);
    if (!found.has(n)) found.set(n, /** @type {HTMLElement} */ (lineAt(root, n - 1)));
    return /** @type {HTMLElement} */ (found.get(n));
  };
  const marks = /** @type {HTMLElement[]} */ ([...right.children].filter((x) => !(/** @type {HTMLElement} */ (x).hidden)));
  const weights = /** @type {any[]} */ ([...left.querySelectorAll('.w')]);
  // read first, then write: one layout for the whole page
  const heights = marks.map((x) => x.offsetHeight);
  /** @type {Map<Element, {room: number, weights: number, css: Set<string>}>} */ const want = new Map();
  const at = (/** @type {Element} */ l) => {
    if (!want.has(l)) want.set(l, { room: 0, weights: 1, css: new Set() });
    return /** @type {{room: number, weights: number, css: Set<string>}} */ (want.get(l));
  };
  marks.forEach((x, i) => {
    const w = at(of(x));
    if (narrow) w.room = (w.room || 4) + heights[i] + CLOSE;
    const kind = ['stop', 'warn', 'question'].find((k) => x.classList.contains(k));
    if (kind && ![...w.css].length) w.css.add(kind);
  });
  for (const b of weights) if (b.shift) { const w = at(of(b)); w.weights = Math.max(w.weights, b.shift + 1); }
  for (const n of headings) { const l = lineAt(root, n - 1); if (l) at(l).css.add('head'); }
  if (long) { const typed = lineOf(root, document.getSelection()?.focusNode ?? null); if (typed instanceof Element && HEAD.test(typed.textContent ?? '')) at(typed).css.add('head'); } else for (const l of linesOf(root)) if (HEAD.test(l.textContent ?? '')) at(l).css.add('head');
  /** @type {Map<Element, string>} */ const now = new Map();
  for (const [l, w] of want) now.set(l, `${[...w.css].sort().join(' ')}|${w.room ? `${w.room}px` : ''}|${w.weights > 1 ? w.weights : ''}`);
  for (const l of dressed.keys()) if (!now.has(l)) dress(/** @type {HTMLElement} */ (l), '||');
  for (const [l, how] of now) if (dressed.get(l) !== how) dress(/** @type {HTMLElement} */ (l), how);
  const line = weights.length ? parseFloat(getComputedStyle(root).lineHeight) : 0;
  // by their boxes, not by their offsets: a stretch of a long text is a frame of its own
  const base = root.getBoundingClientRect().top;
  const top = (/** @type {HTMLElement} */ l) => l.getBoundingClientRect().top - base;
  const tops = marks.map((x) => top(of(x)));
  const ends = marks.map((x, i) => (narrow ? tops[i] + of(x).offsetHeight : 0));
  const weighed = weights.map((b) => top(of(b)));
  let end = 0; // where the last mark ends
  /** @type {Element|null} */ let last = null; let used = 0;
  marks.forEach((x, i) => {
    const l = of(x);
    if (l !== last) { last = l; used = 0; }
    const y = narrow ? ends[i] - (want.get(l)?.room ?? 0) + 4 + used : Math.max(tops[i], i ? end + GAP : 0);
    used += heights[i] + CLOSE;
    x.classList.toggle('moved', !narrow && y > tops[i] + 6);
    x.style.marginTop = `${Math.max(y - end, i ? (narrow ? CLOSE : GAP) : 0)}px`;
    end = y + heights[i];
  });
  weights.forEach((b, i) => { b.style.top = `${weighed[i] + (b.shift ?? 0) * line}px`; });
  return now;
}

/** @param {HTMLElement} l @param {string} how */
function dress(l, how) {
  const [css, room, weights] = how.split('|');
  l.className = l.classList.contains('lit') ? `${css} lit`.trim() : css;
  l.style.paddingBottom = room;
  l.style.minHeight = weights ? `calc(${weights} * var(--line))` : ''; // each weight of a line has its own height beside it
  if (!l.getAttribute('style')) l.removeAttribute('style');
  if (!l.className) l.removeAttribute('class');
}
