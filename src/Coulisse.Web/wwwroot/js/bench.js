// @ts-check
// One module for every page; an island wakes when its element is on the page.
import './manuscript.js';
import './time-plan.js';
import './planning.js';

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
