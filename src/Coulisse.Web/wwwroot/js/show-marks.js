// @ts-check
// What is shown live, set by a touch in the card's margin. The mark hangs on the step and is kept with the card.
import { el, post } from './dom.js';

const WAYS = [['full', 'the whole step'], ['begin', 'its beginning'], ['finish', 'its end'], ['tell', 'only told'], ['', 'not shown']];
const SHORT = /** @type {Record<string, string>} */ ({ full: 'shown', begin: 'begun', finish: 'finished', tell: 'told' });

/** The button in the margin of a step. @param {any} ms the manuscript @param {number} line @param {string} how */
export function showMark(ms, line, how) {
  const b = el('button', { type: 'button', class: `w show ${how ? 'set' : ''}`, 'data-line': line, 'data-key': `s${line}`, 'aria-expanded': 'false', 'aria-label': how ? `Line ${line}, ${SHORT[how]} live. Change it.` : `Show the step on line ${line} live`, onclick: () => open(ms, b, line, how) },
    el('span', {}, how ? SHORT[how] : 'show'));
  b.shift = 0;
  return b;
}

/** @param {any} ms @param {any} b @param {number} line @param {string} how */
function open(ms, b, line, how) {
  const mine = b.getAttribute('aria-expanded') === 'true';
  ms.closeWeight();
  if (mine) return;
  b.setAttribute('aria-expanded', 'true');
  ms.opened = el('div', { class: 'open-weight' }, el('p', {}, 'Shown live:'),
    el('div', { class: 'pick' }, ...WAYS.map(([key, words]) => el('button', { type: 'button', 'aria-pressed': String(key === how), onclick: () => set(ms, line, key) }, words))));
  ms.opened.style.top = `${b.offsetTop + b.offsetHeight}px`;
  b.after(ms.opened);
}

/** @param {any} ms @param {number} line @param {string} how */
async function set(ms, line, how) {
  try {
    await post(`/api/cards/${ms.dataset.card}/show`, { text: ms.text, line, how });
    ms.closeWeight();
    await ms.ask();
    ms.querySelector(`[data-key="s${line}"]`)?.focus();
  } catch (e) { ms.state.textContent = /** @type {Error} */ (e).message; }
}
