// A question and its field: reads the answer as the job writes it, and takes such an answer back.
const questionsIn = scope => [...scope.querySelectorAll(".q")].filter(q => (q.parentElement.closest(".thing") ?? document) === scope);
const question = (id, scope = document) => questionsIn(scope).find(q => q.dataset.q === id);
const input = q => q.querySelector("input, textarea, select");
const chosen = q => [...q.querySelectorAll(":scope > fieldset .choices input")].find(r => r.checked)?.value ?? "";
const choose = (q, word) => [...q.querySelectorAll(":scope > fieldset .choices input")].forEach(r => { r.checked = r.value === word; });
const part = (q, name) => q.querySelector(`select.${name}, .${name} input`);
const placeForm = new RegExp("^(?:(\\w+) (?:wall|gable)|wall (\\d+))(?:, ([^,]+?) from (?:the (\\w+) corner|its (left|right) end))?, "
  + "(?:at the (eaves|eave|ridge)|([^,]+?) up)$");

function readMeasure(field) {
  if (!field.value.trim()) return null;
  const { dimension, unit, min, max } = field.dataset, read = readQuantity(field.value, dimension, unit);
  if (read.problem) return { problem: read.problem, values: { unit: read.unit, usual: unit } };
  const bounds = { min: inUnit(Number(min), dimension, unit), max: inUnit(Number(max), dimension, unit) };
  if (read.value < Number(min) - 1e-9 || read.value > Number(max) + 1e-9) return { problem: "range", values: bounds };
  return read;
}

function readBearing(q) {
  const north = chosen(q), written = input(q).value.trim();
  if (!written) return null;
  const degrees = readDegrees(written);
  if (!(degrees >= 0 && degrees <= 360)) return { problem: "no-bearing" };
  if (!north) return { problem: "which-north" };
  // The plan of the house is drawn before the declination is known.
  return q.dataset.q === "front" && north !== "true" ? { problem: "true-only" } : { text: `${degrees} deg ${north}` };
}

function writeBearing(q, text) {
  const [degrees, , north] = text.split(" ");
  writeInput(q, degrees);
  choose(q, north);
}

function readPlace(q) {
  const [wall, corner, high] = [part(q, "wall").value, part(q, "corner").value, chosen(q)];
  const [along, up] = [readMeasure(part(q, "along")), readMeasure(part(q, "up"))];
  if (!wall && !corner && !high && !along && !up) return null;
  if (along?.problem || up?.problem) return along?.problem ? along : up;
  if (!wall || !high || (high === "measured" && !up) || (along !== null) !== (corner !== "")) return { problem: "place-unfinished" };
  if (corner && !cornerFits(wall, corner)) return { problem: "corner-unfit" };
  const [number, end] = [wall.split("-")[1], corner.split("-")[1]];
  const from = along ? `, ${along.text} from ${end ? `its ${corner.split("-")[0]} end` : `the ${corner} corner`}` : "";
  return { text: `${number ? `wall ${number}` : `${wall} wall`}${from}, ${high === "measured" ? `${up.text} up` : `at the ${high}`}` };
}

// A wall by its number has two ends; the corner of a wall that faces north is not its north corner.
function cornerFits(wall, corner) {
  if (corner.endsWith("-end")) return true;
  const own = side => ["front", "back", "left", "right"].includes(side), axis = side => ["front", "back", "north", "south"].includes(side);
  return !wall.startsWith("wall-") && (own(wall) !== own(corner) || axis(wall) !== axis(corner));
}

function writePlace(q, text) {
  const m = placeForm.exec(text);
  if (!m) return;
  const [, side, number, along, corner, end, edge, up] = m, wall = part(q, "wall");
  if (number && ![...wall.options].some(o => o.value === `wall-${number}`)) addWall(wall, number);
  wall.value = number ? `wall-${number}` : side;
  [part(q, "along").value, part(q, "corner").value, part(q, "up").value] = [along ?? "", end ? `${end}-end` : corner ?? "", up ?? ""];
  choose(q, edge ? (edge === "ridge" ? "ridge" : "eaves") : "measured");
}

function readWhole(q) {
  const written = input(q).value.trim();
  if (!written) return null;
  const { min, max } = input(q).dataset;
  const good = /^\d+$/.test(written) && Number(written) >= min && Number(written) <= max;
  return good ? { text: String(Number(written)) } : { problem: "whole", values: { min, max } };
}

const written = text => text ? { text } : null;
const writeInput = (q, text) => { input(q).value = text; };

function writeSelect(q, text) {
  const select = input(q);
  if (![...select.options].some(o => o.value === text)) select.add(new Option(text, text));
  select.value = text;
}

function writeTicks(q, words) {
  for (const word of words) {
    let box = [...q.querySelectorAll(".ticks input")].find(b => b.value === word);
    if (!box) {
      const label = q.querySelector(".ticks").appendChild(document.createElement("label"));
      label.className = "tick";
      box = Object.assign(label.appendChild(document.createElement("input")), { type: "checkbox", value: word, name: `r-${q.dataset.q}` });
      label.appendChild(document.createElement("span")).textContent = word;
    }
    box.checked = true;
  }
}

function readTicks(q) {
  const words = [...q.querySelectorAll(".ticks input")].filter(b => b.checked).map(b => b.value);
  return words.length ? { text: words.join(", "), words } : null;
}

const kinds = {
  text: { read: q => written(input(q).value.replace(/\s+/g, " ").trim()), write: writeInput },
  date: { read: q => written(input(q).value), write: writeInput },
  quantity: { read: q => readMeasure(input(q)), write: writeInput },
  whole: { read: readWhole, write: writeInput },
  bearing: { read: readBearing, write: writeBearing },
  choice: { read: q => written(chosen(q)), write: choose },
  select: { read: q => written(input(q).value), write: writeSelect },
  place: { read: readPlace, write: writePlace },
  coordinates: { read: q => input(q).value.trim() ? readCoordinates(input(q).value) : null, write: writeInput },
  ticks: { read: readTicks, write: writeTicks },
  list: { read: q => things(q).length ? { text: "some" } : null, write: () => {} },
  "list-or-none": { read: q => written(chosen(q)), write: choose },
};

const unknownButton = q => q.querySelector(":scope > .unknown");
const isUnknown = q => unknownButton(q)?.getAttribute("aria-pressed") === "true";

// Null when nobody answered, { unknown } when nobody knows, { problem } when it does not read, otherwise { text }.
function read(q) {
  if (isUnknown(q)) return { unknown: true };
  return kinds[q.dataset.kind].read(q) ?? (q.dataset.kept ? { text: q.dataset.kept, kept: true } : null);
}

// What the field cannot show stays as the file has it.
function write(q, answer) {
  kinds[q.dataset.kind].write(q, answer);
  delete q.dataset.kept;
  if (typeof answer === "string" && kinds[q.dataset.kind].read(q)?.text !== answer) {
    empty(q);
    q.dataset.kept = answer;
  }
}

function empty(q) {
  for (const field of q.querySelectorAll("input, select, textarea")) {
    if (field.type === "radio" || field.type === "checkbox") field.checked = false;
    else field.value = "";
  }
}

function setUnknown(q, unknown) {
  unknownButton(q)?.setAttribute("aria-pressed", String(unknown));
  if (unknown) { empty(q); delete q.dataset.kept; }
}

// The good answer to a question that is asked; empty otherwise.
function answer(id, scope = document) {
  const q = question(id, scope) ?? question(id);
  return q && isAsked(q) ? read(q)?.text ?? "" : "";
}

const scopeOf = q => q.parentElement.closest(".thing") ?? document;

function holds(term, scope) {
  const m = /^([\w|-]+)(!?=)?(.*)$/.exec(term), ids = m[1].split("|");
  const fits = text => m[3].split("|").some(w => w.endsWith("*") ? text.startsWith(w.slice(0, -1)) : text === w);
  if (!m[2]) return ids.some(id => answer(id, scope) !== "");
  return fits(answer(m[1], scope)) === (m[2] === "=");
}

const allHold = (terms, scope) => (terms ?? "").split(";").filter(Boolean).every(t => holds(t, scope));

function isAsked(q) {
  if (q.dataset.chain !== undefined && kept.chain) return false;
  return allHold(q.dataset.when, scopeOf(q));
}

// A house that the file draws corner by corner is no box.
const inPlace = { "house-form": "routing.house.footprint", front: "routing.plan-up" };
const isReplaced = q => kept.entries.some(e => e.path.join(".") === inPlace[q.dataset.q]);

function isNeeded(q) {
  const { needed, neededWhen } = q.dataset;
  return !isReplaced(q) && (needed !== undefined || (neededWhen !== undefined && allHold(neededWhen, scopeOf(q))));
}
