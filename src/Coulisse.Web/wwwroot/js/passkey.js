// One touch: the bench asks, the browser's own dialogue answers, the bench checks.
class PassKey extends HTMLElement {
  connectedCallback() {
    this.querySelector("button").addEventListener("click", () => this.go().catch((e) => this.say(e.name === "NotAllowedError" ? "It was not confirmed." : e.message)));
  }

  say(words) { this.querySelector("[role=status]").textContent = words; }

  async go() {
    const asked = await fetch(this.dataset.ask, { method: "POST" });
    if (!asked.ok) throw new Error("The bench did not answer. Try again in a minute.");
    const options = await asked.json();
    const credential = this.dataset.new
      ? await navigator.credentials.create({ publicKey: PublicKeyCredential.parseCreationOptionsFromJSON(options) })
      : await navigator.credentials.get({ publicKey: PublicKeyCredential.parseRequestOptionsFromJSON(options) });
    const sent = await fetch(this.dataset.send, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(credential) });
    if (!sent.ok) throw new Error((await sent.json()).detail);
    location.assign(this.dataset.to);
  }
}

customElements.define("pass-key", PassKey);
