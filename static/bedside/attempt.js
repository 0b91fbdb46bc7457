// The attempt as this tab knows it: what the server has stored, and behind it what still waits in the outbox.

import { fold } from "./fold.js";
import { freshKey, Outbox } from "./outbox.js";
import { load, post } from "./server.js";

export class Attempt extends EventTarget {
  #stored = new Map();
  #channel;

  static async open(id) {
    const attempt = new Attempt();
    await attempt.#start(id);
    return attempt;
  }

  async #start(id) {
    this.id = id;
    this.outbox = new Outbox(id, (event) => post(id, event), {
      change: () => this.#changed(),
      stored: (event, reply) => this.#acknowledge(event, reply),
      refused: (event, reply) => this.dispatchEvent(new CustomEvent("refused", { detail: { event, reply } })),
    });
    await this.refresh();
    this.#listenToOtherTabs();
    this.outbox.run();
  }

  /** Reads everything again: another tab may have written. */
  async refresh() {
    const read = await load(this.id);
    const known = new Map(this.case?.manoeuvres.map((one) => [one.id, one]));
    read.manoeuvres = read.manoeuvres.map((one) => Object.assign(known.get(one.id) ?? {}, one));
    this.case = read;
    this.clock = read.clock;
    for (const event of read.events) this.#stored.set(event.key, event);
    this.#changed();
  }

  /** Gives the event its key and queues it. */
  send(event) {
    const sent = { ...event, key: freshKey() };
    this.outbox.add(sent);
    return sent;
  }

  get sheet() {
    const events = [...this.#stored.values()].sort((one, other) => one.seq - other.seq);
    const waiting = this.outbox.waiting.filter((event) => !this.#stored.has(event.key));
    const sheet = fold([...events, ...waiting], this.clock.position);
    sheet.handedIn ||= this.case.attempt.handedIn;
    sheet.waiting = waiting;
    return sheet;
  }

  #acknowledge(event, reply) {
    this.#stored.set(event.key, { ...event, seq: reply.seq, clock: reply.clock, shown: reply.shown });
    if (reply.clock) this.clock = reply.clock;
    this.#channel?.postMessage("changed");
    this.#changed();
  }

  #listenToOtherTabs() {
    const again = () => this.refresh().catch(() => {});
    if (window.BroadcastChannel) {
      this.#channel = new BroadcastChannel(`manubrium:attempt:${this.id}`);
      this.#channel.onmessage = again;
    }
    document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && again());
    addEventListener("pageshow", (event) => event.persisted && again());
  }

  #changed() {
    if (this.case) this.dispatchEvent(new Event("change"));
  }
}
