// Plays a stretch of time at true speed, frame by frame, on whatever shows it.

export class Player {
  #frame = 0;

  /**
   * @param from, to in milliseconds
   * @param show     (milliseconds) => draws that moment
   */
  constructor(from, to, show) {
    this.from = from;
    this.to = to;
    this.show = show;
  }

  play() {
    this.stop();
    const begun = performance.now();
    const step = (now) => {
      const at = Math.min(this.from + now - begun, this.to);
      this.show(at);
      if (at < this.to) this.#frame = requestAnimationFrame(step);
    };
    this.#frame = requestAnimationFrame(step);
  }

  stop() {
    cancelAnimationFrame(this.#frame);
  }
}
