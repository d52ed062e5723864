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
