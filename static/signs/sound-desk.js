// One loudspeaker for every sign that is heard. Nothing sounds until a button asks for it; a new sound ends the last one.

let context;
let playing;

/**
 * Plays what a builder makes: (context, destination, at) => seconds it lasts.
 * @param sounded called with the seconds since the start, until the sound ends
 */
export async function play(build, sounded = () => {}) {
  stop();
  context ??= new AudioContext();
  await context.resume();
  const out = context.createGain();
  out.connect(context.destination);
  const begin = context.currentTime + 0.05;
  const ends = begin + build(context, out, begin);
  playing = { out, frame: 0 };
  const mine = playing;
  const follow = () => {
    if (playing !== mine) return;
    sounded(Math.max(0, context.currentTime - begin));
    if (context.currentTime < ends) mine.frame = requestAnimationFrame(follow);
    else stop();
  };
  follow();
}

export function stop() {
  if (!playing) return;
  cancelAnimationFrame(playing.frame);
  playing.out.gain.setTargetAtTime(0, context.currentTime, 0.01);
  const { out } = playing;
  setTimeout(() => out.disconnect(), 100);
  playing = undefined;
}
