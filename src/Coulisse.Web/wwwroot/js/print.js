// @ts-check
// Print pages: the button opens the browser's own dialogue.
document.querySelector('[data-print]')?.addEventListener('click', () => print());
