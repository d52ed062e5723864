// @ts-check
// <plan-progress>: what the planner has reached so far; opens the plan when it is kept.
import { el } from './dom.js';

class PlanProgress extends HTMLElement {
  connectedCallback() {
    if (this.timer) return;
    this.bar = el('progress', { max: 100, value: 0, 'aria-label': 'Time spent of the time allowed' });
    this.says = el('p', { role: 'status' }, 'The planner has begun.');
    this.prepend(this.says, this.bar);
    this.timer = setInterval(() => this.look(), 400);
    this.look();
  }

  disconnectedCallback() { clearInterval(this.timer); }

  async look() {
    try {
      const answer = await fetch(this.dataset.from ?? '', { cache: 'no-store' });
      if (!answer.ok) throw new Error();
      const s = await answer.json();
      if (s.says !== this.said) { this.said = s.says; this.says.textContent = s.says; }
      this.bar.value = s.percent;
      if (s.at) { clearInterval(this.timer); location.replace(s.at); }
      if (s.failed) { clearInterval(this.timer); this.bar.remove(); location.reload(); }
    } catch { this.says.textContent = 'The bench does not answer; the planner goes on if it still runs.'; }
  }
}
customElements.define('plan-progress', PlanProgress);

/** <look-again>: fetches its own page while something runs on the bench, and shows what has come since; what is open stays open. */
class LookAgain extends HTMLElement {
  connectedCallback() { if (this.dataset.running && !this.timer) this.timer = setInterval(() => this.look(), 2000); }

  disconnectedCallback() { clearInterval(this.timer); }

  async look() {
    try {
      const answer = await fetch(location.href, { cache: 'no-store', headers: { Accept: 'text/html' } });
      if (!answer.ok) return;
      const there = /** @type {HTMLElement|null} */ (new DOMParser().parseFromString(await answer.text(), 'text/html').querySelector('look-again'));
      if (!there) return;
      const open = new Set(Array.from(this.querySelectorAll('details[open]'), (d) => d.parentElement?.querySelector('b')?.textContent));
      if (this.contains(document.activeElement) && document.activeElement !== document.body && there.dataset.running) { if (there.textContent === this.textContent) return; }
      this.replaceChildren(...Array.from(there.childNodes, (n) => document.importNode(n, true)));
      for (const d of this.querySelectorAll('details')) if (open.has(d.parentElement?.querySelector('b')?.textContent)) d.setAttribute('open', '');
      if (!there.dataset.running) clearInterval(this.timer);
    } catch { /* no network: what was solved stays */ }
  }
}
customElements.define('look-again', LookAgain);
