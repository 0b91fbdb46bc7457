// Heart sounds: heard on a press and drawn as they sound, the breath above. A map shows where the stethoscope stands; each
// place, position and chest piece that was tried can be called back and heard beside the others.

import { el, put } from "../bedside/dom.js";
import { clipOf, heartAudio } from "./heart-audio.js";
import { heartMap } from "./heart-map.js";
import { breathStrip, clipText, soundStrip } from "./heart-trace.js";
import { amountText, latest, measuresOf } from "./latest.js";
import { onAPartner } from "./partner.js";
import { play, stop } from "./sound-desk.js";
import { trembling } from "./strip.js";

const KEY = "Taller is louder: 1× is the faintest that an ear hears through a stethoscope, the dashed line a healthy first sound at the apex (13×). Below about 2½× a noise is made out only after listening for some time; from about 6×, half of a healthy first sound, it is loud. A broad stroke is a thump, a broad faint one a low thud, a thin one a snap; hatching is noise, closer lines are higher. Use headphones: a small loudspeaker gives little of the low sounds.";
const CHANGE = "An ear tells a change, loudness and length taken together, from about a quarter more or a fifth less on.";
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
  const touching = named("contact") && `touching ${named("contact")}`;
  const breath = named("breath") && `breath ${named("breath")}`;
  return [place, named("piece"), touching, breath, probe.position?.replaceAll("-", " ")].filter(Boolean).join(", ");
};

let hidden = false;

const tremble = (probe) => measuresOf(probe).find(({ label }) => label.startsWith("tremble"));

const handText = (probe) => (tremble(probe) ? `${tremble(probe).label}: ${amountText(tremble(probe).amount)} ${tremble(probe).unit}` : "");

const THRILL_HZ = 60;

/** What the flat of the hand feels where the stethoscope stood, for a manoeuvre that asks for both. */
function hand(probe) {
  const felt = tremble(probe);
  if (!felt) return "";
  const { node } = trembling(felt.amount / 100, THRILL_HZ);
  return el("div", {}, el("p", { class: "trace-title" }, `${felt.label[0].toUpperCase()}${felt.label.slice(1)}: ${amountText(felt.amount)} ${felt.unit}`), node);
}

const breathText = ({ breath: { samples } }) => (samples.some((share) => share !== samples[0]) ? "The breath: in is up" : "The breath is held");

function stage(manoeuvre, tried, probe, { still, again }) {
  const clip = clipOf(probe);
  const [breath, sound] = [breathStrip(clip), soundStrip(clip)];
  const picture = el("details", { class: "phono", open: !hidden, ontoggle: (event) => (hidden = !event.target.open) },
    el("summary", {}, "Phonocardiogram: loudness, in times the faintest that is heard"), sound.node,
    el("details", { class: "key" }, el("summary", {}, "How to read it"), el("p", { class: "quiet" }, KEY)));
  const caption = el("p", { class: "trace-title" }, wordsFor(manoeuvre, probe));
  const moments = clip.moments.map(({ label, seconds }) => el("p", { class: "quiet" }, `${label[0].toUpperCase()}${label.slice(1)} ${seconds} s on. ${CHANGE}`));
  const hear = el("button", { type: "button", class: "first", onclick: () => play(heartAudio(probe), (seconds) => follow(seconds)) }, "Listen");
  const follow = (seconds) => {
    if (still) return;
    breath.at(seconds);
    sound.at(seconds);
  };
  const pick = again && manoeuvre.placeMode === "points" ? (id) => again("none", id) : undefined;
  const map = heartMap({ places: manoeuvre.places?.length ? manoeuvre.places : AREAS, tried: tried.map((one) => placeOf(manoeuvre, one)), standing: placeOf(manoeuvre, probe), pick });
  return el("div", { class: "stage zone-stage heart-stage" }, el("div", { class: "figure-box" }, map),
    el("div", { class: "traces zone-strips" }, caption, el("p", { class: "quiet" }, breathText(clip)), breath.node, picture, hand(probe), ...moments,
      el("div", { class: "actions" }, hear, el("button", { type: "button", onclick: stop }, "Stop"))));
}

export function heartSound(host, { manoeuvre, probes, fresh, still, again }) {
  const tried = latest(probes, (probe) => `${wordsFor(manoeuvre, probe)}`);
  const box = el("div");
  const show = (probe) => put(box, stage(manoeuvre, tried, probe, { still, again }));
  const compared = tried.length > 1
    ? el("div", { class: "actions tried" }, el("span", { class: "quiet" }, "Compare:"), ...tried.map((probe) => el("button", { type: "button", onclick: () => (stop(), show(probe), play(heartAudio(probe))) }, wordsFor(manoeuvre, probe))))
    : "";
  host.append(box, compared, tremble(probes[0]) ? onAPartner() : "");
  const last = fresh ?? probes.at(-1);
  show(last);
  return [`${wordsFor(manoeuvre, last)}: ${clipText(last)}`, handText(last)].filter(Boolean).join("; ") + ".";
}
