// @ts-check
// The kitchen's book on a narrow screen: a row is one line until it is touched.

document.querySelector('form[data-book]')?.addEventListener('click', (e) => {
  const b = /** @type {Element} */ (e.target).closest?.('.item-open, .item-all');
  const row = b?.closest('tr');
  if (!b || !row) return;
  if (b.matches('.item-all')) { row.classList.add('every'); b.remove(); row.querySelector('input')?.focus(); return; }
  const open = row.classList.toggle('open');
  b.setAttribute('aria-expanded', String(open));
  if (open && row.matches('.blank')) row.querySelector('input')?.focus();
});
