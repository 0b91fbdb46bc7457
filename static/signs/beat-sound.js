// The soft thump that is heard below a cuff, made on the spot; nothing sounds until it is asked for.

let context;

/** Makes one thump now. */
export function thump() {
  context ??= new AudioContext();
  const [tone, loudness, now] = [context.createOscillator(), context.createGain(), context.currentTime];
  tone.frequency.setValueAtTime(90, now);
  tone.frequency.exponentialRampToValueAtTime(45, now + 0.09);
  loudness.gain.setValueAtTime(0.5, now);
  loudness.gain.exponentialRampToValueAtTime(0.001, now + 0.12);
  tone.connect(loudness).connect(context.destination);
  tone.start(now);
  tone.stop(now + 0.13);
}
