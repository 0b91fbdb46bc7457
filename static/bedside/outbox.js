// Events the server has not acknowledged yet, kept in localStorage so that a closed lid or a lost line loses nothing.
// They are sent one after the other, in order, each under the key it was born with: the server answers a repeated key
// with what it stored, so sending twice adds nothing.

const FIRST_WAIT = 1000;
const LONGEST_WAIT = 30000;

const wait = (ms) => new Promise((done) => setTimeout(done, ms));

/** A random UUID; crypto.randomUUID exists only where the page came over TLS or from this machine. */
export function freshKey() {
  if (crypto.randomUUID) return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

export class Outbox {
  #name;
  #post;
  #memory = [];
  #running = false;
  #wake = () => {};
  #on;

  /**
   * @param attempt id of the attempt
   * @param post    sends one event, resolves to {outcome: "stored" | "refused" | "signed-out" | "later", reply}
   * @param on      {change(), stored(event, reply), refused(event, reply)}
   */
  constructor(attempt, post, on) {
    this.#name = `manubrium:outbox:${attempt}`;
    this.#post = post;
    this.#on = on;
    this.state = "saved";
    addEventListener("online", () => this.tryNow());
    addEventListener("storage", (event) => event.key === this.#name && this.#on.change());
  }

  get waiting() {
    try {
      return JSON.parse(localStorage.getItem(this.#name) ?? "[]");
    } catch {
      return this.#memory;
    }
  }

  add(event) {
    this.#keep([...this.waiting, event]);
    this.#on.change();
    this.run();
  }

  /** Sends what waits; returns at once when another call is at it. */
  async run() {
    if (this.#running) return;
    this.#running = true;
    try {
      await this.#alone(() => this.#drain());
    } finally {
      this.#running = false;
    }
    if (this.waiting.length) this.run();
  }

  tryNow() {
    this.#wake();
    this.run();
  }

  /** One tab sends at a time where the browser can arrange it; where not, the keys keep it harmless. */
  #alone(work) {
    return navigator.locks ? navigator.locks.request(this.#name, work) : work();
  }

  async #drain() {
    let pause = FIRST_WAIT;
    for (let [event] = this.waiting; event; [event] = this.waiting) {
      const { outcome, reply } = await this.#post(event);
      if (outcome === "stored" || outcome === "refused") {
        this.#keep(this.waiting.filter((other) => other.key !== event.key));
        this.#on[outcome](event, reply);
        pause = FIRST_WAIT;
      }
      this.#say(outcome === "later" || outcome === "signed-out" ? outcome : "saved");
      if (this.state !== "saved") {
        await Promise.race([wait(pause), new Promise((wake) => (this.#wake = wake))]);
        pause = Math.min(pause * 2, LONGEST_WAIT);
      }
    }
  }

  #say(state) {
    this.state = state;
    this.#on.change();
  }

  #keep(events) {
    this.#memory = events;
    try {
      localStorage.setItem(this.#name, JSON.stringify(events));
    } catch {
      // Storage is full or forbidden: the events live as long as the page.
    }
  }
}
