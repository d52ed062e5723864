// @ts-check
// Small things every island needs. Text always goes in as text: nothing here takes markup.

/**
 * Makes an element.
 * @param {string} tag @param {Record<string, any>} [props] @param {...(Node|string|null|undefined|false)} inside
 * @returns {any}
 */
export function el(tag, props = {}, ...inside) {
  const e = document.createElement(tag);
  for (const [k, v] of Object.entries(props)) {
    if (v === null || v === undefined || v === false) continue;
    if (k === 'class') e.className = v;
    else if (k.startsWith('on')) e.addEventListener(k.slice(2), v);
    else e.setAttribute(k, v === true ? '' : String(v));
  }
  for (const x of inside) if (x) e.append(x);
  return e;
}

/** @param {string} tag @param {Record<string, any>} [props] @param {...(Node|string|null|undefined|false)} inside @returns {any} */
export function svg(tag, props = {}, ...inside) {
  const e = document.createElementNS('http://www.w3.org/2000/svg', tag);
  for (const [k, v] of Object.entries(props)) {
    if (v === null || v === undefined || v === false) continue;
    if (k.startsWith('on')) e.addEventListener(k.slice(2), v);
    else e.setAttribute(k, String(v));
  }
  for (const x of inside) if (x) e.append(x);
  return e;
}

/** Posts JSON; throws with the server's own sentence when it was refused. @param {string} url @param {any} body @param {AbortSignal} [signal] */
export async function post(url, body, signal) {
  const answer = await fetch(url, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body), signal });
  if (!answer.ok) {
    let says = '';
    try { says = (await answer.json()).detail ?? ''; } catch { /* not JSON: the status says it */ }
    throw new Error(says || `The bench answered ${answer.status}. Your text is still here; try again.`);
  }
  return answer.status === 204 ? null : answer.json();
}

/** How a figure came about, as nodes. @param {any} w @returns {HTMLElement} */
export function working(w) {
  return el('div', { class: 'working' },
    el('p', {}, w.kind ? el('b', {}, w.kind[0].toUpperCase() + w.kind.slice(1) + '. ') : null, w.text),
    w.equation ? el('p', { class: 'eq' }, w.equation) : null,
    w.inputs?.length ? el('dl', {}, ...w.inputs.flatMap((/** @type {any} */ i) => [el('dt', {}, i.name), el('dd', {}, i.value, i.working ? el('details', {}, el('summary', {}, 'where from'), working(i.working)) : null)])) : null,
    w.range ? el('p', { class: 'src' }, 'Holds for ' + w.range) : null,
    w.source ? el('p', { class: 'src' }, 'Source: ' + w.source) : null);
}
