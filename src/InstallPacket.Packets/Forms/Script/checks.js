// What is wrong, what is missing, what to look at again.
function localDay() {
  const now = new Date(), two = n => String(n).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function metres(id, scope) {
  const q = question(id, scope), answered = q && isAsked(q) ? read(q) : null;
  return answered?.value ?? NaN;
}

// Checks between answers: the question at which it shows, whether it cannot be, and when; an object holds the values to say.
const between = [
  ["walls", true, "walls-turn", wrongTurns],
  ["walls", true, "walls-open", wrongGap],
  ["ridge", true, "ridge-low", () => metres("ridge") < metres("eaves")],
  ["free-length", true, "mast-short", () => metres("free-length") >= metres("mast-length")],
  ["wires", false, "wires-unseen", () => !chosen(question("wires")) && answer("mount-at") !== ""],
  ["date", false, "day-past", () => answer("date") !== "" && answer("date") < localDay()],
  ["place", false, "place-coarse", () => read(question("place"))?.coarse === true],
];

function stateOf(q) {
  if (!isAsked(q)) return { kind: "off" };
  const answered = read(q);
  if (answered?.unknown) return { kind: "unknown", said: say(isNeeded(q) ? "unknown-needed" : "unknown") };
  if (answered?.problem) return { kind: "wrong", said: `${say("wrong")} ${say(answered.problem, answered.values)}` };
  const found = scopeOf(q) === document && between.find(([id, , , holds]) => id === q.dataset.q && holds());
  if (found) return { kind: found[1] ? "wrong" : "look", said: `${say(found[1] ? "wrong" : "look")} ${say(found[2], found[3]())}` };
  if (answered?.kept) return { kind: "look", said: say("stays", { text: answered.text }) };
  const counted = q.querySelector(":scope > .things") && (q.dataset.kind === "list" || answered?.text === "some");
  if (isNeeded(q) && (answered === null || (counted && things(q).length === 0))) return { kind: "missing", said: "" };
  return { kind: answered === null ? "open" : "good", said: "" };
}

function showQuestion(q) {
  const asked = isAsked(q), state = stateOf(q), line = q.querySelector(":scope > .said");
  q.hidden = !asked;
  q.dataset.state = state.kind;
  const list = q.querySelector(":scope > .things");
  if (list) {
    const open = q.dataset.kind === "list" || chosen(q) === "some";
    list.hidden = !open;
    q.querySelector(":scope > .add").hidden = !open;
  }
  if (q.dataset.q === "walls") drawWalls(q);
  if (q.dataset.kind === "place") q.querySelector(".up").hidden = chosen(q) !== "measured";
  if (line.textContent !== (state.said ?? "")) line.textContent = state.said ?? "";
  return state.kind;
}

const everyAsked = section =>
  [...section.querySelectorAll(".q")].filter(q => !q.parentElement.closest(".q[hidden]") && !q.closest(".things[hidden]"));

// Shows or hides each question and says what is to be said; gives what is found in each section.
function review() {
  offerWalls();
  return sections().map(section => {
    const found = { section, wrong: [], look: [], missing: [], unknown: [], good: [], open: [] };
    for (const q of section.querySelectorAll(".q")) showQuestion(q);
    for (const q of everyAsked(section)) if (found[q.dataset.state]) found[q.dataset.state].push(q);
    return found;
  });
}

function sectionState(found) {
  const count = (list, one, many) => list.length === 1 ? say(one) : say(many, { count: list.length });
  if (found.wrong.length) return ["wrong", count(found.wrong, "state-wrong-one", "state-wrong")];
  if (found.good.length + found.unknown.length === 0 && found.missing.length) return ["open", say("state-open")];
  if (found.missing.length) return ["missing", count(found.missing, "state-missing-one", "state-missing")];
  if (found.look.length) return ["look", count(found.look, "state-look-one", "state-look")];
  return ["good", say("state-good")];
}

// The question and, for a thing of a list, which one.
function nameOf(q) {
  const thing = q.parentElement.closest(".thing"), ask = q.querySelector(".ask").firstChild.textContent.trim();
  return thing ? `${thing.querySelector("h2").textContent.trim()}: ${ask}` : ask;
}

function listFindings(all, into, go) {
  into.replaceChildren();
  if (!all.some(s => s.wrong.length + s.missing.length > 0)) into.appendChild(document.createElement("p")).textContent = say("list-good");
  for (const kind of ["wrong", "look", "missing", "unknown"]) {
    const found = all.flatMap(s => s[kind]);
    if (found.length === 0) continue;
    into.appendChild(document.createElement("h2")).textContent = say(`list-${kind}`, { count: found.length });
    for (const q of found) {
      const button = into.appendChild(document.createElement("button"));
      Object.assign(button, { type: "button", className: `go ${kind}`, textContent: nameOf(q) });
      button.addEventListener("click", () => go(q));
    }
  }
}
