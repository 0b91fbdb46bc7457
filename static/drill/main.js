// Today's five signs: one question after the other. What is right comes from the server, after the answer.

import { announce, announceIn } from "../bedside/announce.js";
import { el, put } from "../bedside/dom.js";
import { answer, load } from "./server.js";
import { Question } from "./question.js";

const host = document.getElementById("drill");
const voice = el("p", { class: "heard", "aria-live": "polite" });
const board = el("div", { class: "board" });
const count = el("p", { class: "count quiet" });

function summary(questions) {
  const right = questions.filter(({ answer: given }) => given?.chosen === given?.right).length;
  return el("section", { class: "card done", tabindex: "-1", "aria-labelledby": "drill-done" },
    el("h2", { id: "drill-done" }, "That is all for today"),
    el("p", {}, `${right} of ${questions.length} right. The others will come again when you are likely to have forgotten them; tomorrow brings five more.`),
    el("p", { class: "actions" }, el("a", { class: "button first", href: "/student" }, "Your patients")));
}

function showAt(day, at) {
  const one = day.questions[at];
  count.textContent = one ? `Sign ${at + 1} of ${day.questions.length}` : "";
  if (!one) {
    put(board, summary(day.questions));
    board.firstChild.focus();
    return;
  }
  const question = new Question(one, day.manoeuvres, {
    answer: async (option) => {
      one.answer = await answer(one.number, option);
      return one.answer;
    },
    next: () => showAt(day, at + 1),
    last: at === day.questions.length - 1,
    say: announce,
  });
  put(board, question.node);
  question.begin();
}

async function start() {
  const day = await load();
  announceIn(voice);
  put(host, voice, count, board);
  if (!day.questions.length) {
    put(board, el("p", { class: "empty" }, "There is nothing to practise today."));
    return;
  }
  const open = day.questions.findIndex(({ answer: given }) => !given);
  showAt(day, open < 0 ? day.questions.length : open);
}

start().catch((error) => put(host, el("p", { class: "notice fault", role: "alert" }, `${error.message} Load the page again.`)));
