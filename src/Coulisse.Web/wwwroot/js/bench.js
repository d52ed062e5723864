// @ts-check
// One module for every page; an island wakes when its element is on the page.
import './manuscript.js';
import './time-plan.js';
import './planning.js';
import './save-picture.js';
import './kitchen.js';
import './parts.js';

// Forms that start long work say so and cannot be sent twice.
document.addEventListener('submit', (e) => {
  const form = /** @type {HTMLFormElement} */ (e.target);
  const text = document.querySelector('card-manuscript');
  const carried = /** @type {HTMLInputElement|null} */ (form.querySelector('[data-carries-card]'));
  if (carried && text) carried.value = /** @type {any} */ (text).text;
  if (form.dataset.says) { const b = form.querySelector('button[type=submit]'); if (b) { b.textContent = form.dataset.says; setTimeout(() => b.setAttribute('disabled', ''), 0); } }
});

// Links that go on with what the card is scaled to.
document.addEventListener('click', (e) => {
  const link = /** @type {HTMLAnchorElement|null} */ (/** @type {Element} */ (e.target).closest?.('a[data-with-scale]'));
  if (!link) return;
  const to = new URL(link.href);
  for (const c of /** @type {NodeListOf<HTMLInputElement>} */ (document.querySelectorAll('[data-margins]'))) if (c.value) to.searchParams.set(c.dataset.margins ?? '', c.value); else to.searchParams.delete(c.dataset.margins ?? '');
  link.href = to.href;
}, { capture: true });

// A text file dropped on a field that takes one replaces its text; the form still has to be kept.
document.addEventListener('drop', async (e) => {
  const field = /** @type {HTMLTextAreaElement|null} */ (/** @type {Element} */ (e.target).closest?.('[data-takes-file]'));
  const file = e.dataTransfer?.files[0];
  if (!field || !file) return;
  e.preventDefault();
  if (file.size > 5 * 1024 * 1024) return;
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (!bytes.subarray(0, 4096).includes(0)) field.value = new TextDecoder().decode(bytes);
});

// A file dropped beside its place must not carry the browser away from what was typed: it goes to the card, if there is one, or nowhere.
const files = (/** @type {DragEvent} */ e) => e.dataTransfer?.types.includes('Files') && !/** @type {Element} */ (e.target).closest?.('input[type=file]');
document.addEventListener('dragover', (e) => { if (files(e)) e.preventDefault(); });
document.addEventListener('drop', (e) => {
  if (!files(e) || e.defaultPrevented) return;
  e.preventDefault();
  /** @type {any} */ (document.querySelector('card-manuscript'))?.drop(e);
});

// The card file answers while one types; without script the form does the same.
const find = /** @type {HTMLInputElement|null} */ (document.querySelector('form[role=search] input[type=search]'));
let turn = 0;
find?.addEventListener('input', async () => {
  const mine = ++turn;
  const to = new URL(location.href);
  to.search = '?' + new URLSearchParams({ q: find.value });
  try {
    const answer = await fetch(to, { headers: { Accept: 'text/html' } });
    if (!answer.ok || mine !== turn) return;
    const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
    if (mine !== turn) return;
    for (const part of ['main [role=status]', 'main ul.plain', 'main table']) {
      const here = document.querySelector(part); const there = page.querySelector(part);
      if (here && there) here.replaceWith(document.adoptNode(there));
    }
    history.replaceState(null, '', to);
    document.dispatchEvent(new CustomEvent('found'));
  } catch { /* no network: what was found stays */ }
});
