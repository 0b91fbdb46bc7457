// Heart sounds: heard on a press and drawn as they sound, the breath above. A map shows where the stethoscope stands; each
// place, position and chest piece that was tried can be called back and heard beside the others.

import { el, put } from "../bedside/dom.js";
import { clipOf, heartAudio } from "./heart-audio.js";
import { heartMap } from "./heart-map.js";
import { breathStrip, clipText, soundStrip } from "./heart-trace.js";
import { latest } from "./latest.js";
import { play, stop } from "./sound-desk.js";

const KEY = "Taller is louder. A broad stroke is a thump, a broad faint one a low thud, a thin one a snap; hatching is noise, closer lines are higher. Use headphones: a small loudspeaker gives little of the low sounds.";
const USUAL = { "first-sound": "mitral", "second-sound-split": "pulmonary", "pericardial-rub": "tricuspid", "apex-on-the-left-side": "mitral", "sternal-edge-leaning-forward": "tricuspid" };
const AREAS = [["aortic", "second right space"], ["pulmonary", "second left space"], ["tricuspid", "lower left edge of the breast bone"], ["mitral", "apex"], ["infraclavicular", "below the left collar bone"]]
  .map(([id, name]) => ({ id, name }));

const chosen = (probe, part) => Object.entries(probe.technique ?? {}).find(([name]) => name.includes(part))?.[1];

/** Where the stethoscope stood. */
const placeOf = (manoeuvre, probe) => probe.place || chosen(probe, "area") || USUAL[manoeuvre.id] || "mitral";

const wordsFor = (manoeuvre, probe) => {
  const named = (part) => {
    const variant = (manoeuvre.variants ?? []).find(({ id }) => id.includes(part));
    return variant?.choices.find(({ id }) => id === chosen(probe, part))?.name;
  };
  const places = manoeuvre.places?.length ? manoeuvre.places : AREAS;
  const place = places.find(({ id }) => id === placeOf(manoeuvre, probe))?.name;
  const breath = named("breath") && `breath ${named("breath")}`;
  return [place, named("piece"), breath, probe.position?.replaceAll("-", " ")].filter(Boolean).join(", ");
};

let hidden = false;

function stage(manoeuvre, tried, probe, { still, again }) {
  const clip = clipOf(probe);
  const [breath, sound] = [breathStrip(clip), soundStrip(clip)];
  const picture = el("details", { class: "phono", open: !hidden, ontoggle: (event) => (hidden = !event.target.open) },
    el("summary", {}, "Phonocardiogram"), sound.node, el("p", { class: "quiet" }, KEY));
  const caption = el("p", { class: "trace-title" }, wordsFor(manoeuvre, probe));
  const moments = clip.moments.map(({ label, seconds }) => el("p", { class: "quiet" }, `${label[0].toUpperCase()}${label.slice(1)} ${seconds} s on.`));
  const hear = el("button", { type: "button", class: "first", onclick: () => play(heartAudio(probe), (seconds) => follow(seconds)) }, "Listen");
  const follow = (seconds) => {
    if (still) return;
    breath.at(seconds);
    sound.at(seconds);
  };
  const pick = again && manoeuvre.placeMode === "points" ? (id) => again("none", id) : undefined;
  const map = heartMap({ places: manoeuvre.places?.length ? manoeuvre.places : AREAS, tried: tried.map((one) => placeOf(manoeuvre, one)), standing: placeOf(manoeuvre, probe), pick });
  return el("div", { class: "stage zone-stage heart-stage" }, el("div", { class: "figure-box" }, map),
    el("div", { class: "traces zone-strips" }, caption, breath.node, picture, ...moments,
      el("div", { class: "actions" }, hear, el("button", { type: "button", onclick: stop }, "Stop"))));
}

export function heartSound(host, { manoeuvre, probes, fresh, still, again }) {
  const tried = latest(probes, (probe) => `${wordsFor(manoeuvre, probe)}`);
  const box = el("div");
  const show = (probe) => put(box, stage(manoeuvre, tried, probe, { still, again }));
  const compared = tried.length > 1
    ? el("div", { class: "actions tried" }, el("span", { class: "quiet" }, "Compare:"), ...tried.map((probe) => el("button", { type: "button", onclick: () => (stop(), show(probe), play(heartAudio(probe))) }, wordsFor(manoeuvre, probe))))
    : "";
  host.append(box, compared);
  const last = fresh ?? probes.at(-1);
  show(last);
  return `${wordsFor(manoeuvre, last)}: ${clipText(last)}.`;
}
