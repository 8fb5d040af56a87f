// A house that is no box: its walls one after the other, the first along the front, the house on the left hand. Lengths in metres.
const wallQuestion = () => question("walls");

// Null while a length or a corner is not known yet.
function wallsSaid() {
  const q = wallQuestion();
  const wallOf = t => ({ length: read(question("length", t))?.value, corner: chosen(question("corner", t)) });
  const walls = q && isAsked(q) ? things(q).map(wallOf) : [];
  return walls.length >= 4 && walls.every(w => w.length > 0 && w.corner) ? walls : null;
}

// Where each wall begins, and where the last one ends.
function cornersOf(walls) {
  let [x, y, right, up] = [0, 0, 1, 0];
  return [[0, 0], ...walls.map(({ length, corner }) => {
    [x, y] = [x + right * length, y + up * length];
    [right, up] = corner === "outer" ? [-up, right] : [up, -right];
    return [x, y];
  })];
}

const turnsOf = walls => walls.reduce((sum, w) => sum + (w.corner === "outer" ? 1 : -1), 0);
const gapOf = walls => Math.hypot(...cornersOf(walls).at(-1));

// A tape around a house is good for 0.6 %, and never better than 100 mm.
const gapAllowed = walls => Math.max(0.1, 0.006 * walls.reduce((sum, w) => sum + w.length, 0));
const unitOfHouse = () => data.us ? "ft" : "m";

function wrongTurns() {
  const walls = wallsSaid();
  return walls && turnsOf(walls) !== 4 ? { turns: turnsOf(walls) } : null;
}

function wrongGap() {
  const walls = wallsSaid();
  return walls && gapOf(walls) > gapAllowed(walls) ? { gap: inUnit(gapOf(walls), "length", unitOfHouse()) } : null;
}

// What is left to the start goes into the last two walls, so that every corner is square.
function footprint() {
  const walls = wallsSaid();
  if (!walls || wrongTurns() || wrongGap()) return null;
  const corners = cornersOf(walls).slice(0, -1);
  corners.at(-1)[0] = 0;
  return corners.map(c => c.map(exactLength));
}

function exactLength(metres) {
  if (!data.us) return `${round(metres, 3)} m`;
  const feet = metres / 0.3048;
  if (feet < -1e-9) return `${round(feet, 4)} ft`;
  let [whole, inches] = [Math.floor(feet + 1e-6), 0];
  inches = round((feet - whole) * 12, 2);
  if (inches >= 12) [whole, inches] = [whole + 1, 0];
  return `${whole} ft${inches > 0 ? ` ${inches} in` : ""}`;
}

// The walls of a footprint; null when it has a corner that is not square or begins elsewhere than at the front.
function wallsFrom(node) {
  const metresOf = n => n.text === undefined ? NaN : readQuantity(n.text, "length", "").value;
  const points = (node?.list ?? []).map(p => (p.list ?? []).map(metresOf));
  if (points.length < 4 || points.some(p => p.length !== 2 || !p.every(Number.isFinite)) || Math.hypot(...points[0]) > 1e-9) return null;
  const sides = points.map(([x, y], i) => { const [a, b] = points[(i + 1) % points.length]; return [a - x, b - y]; });
  if (!(sides[0][0] > 0) || sides.some(([x, y]) => Math.min(Math.abs(x), Math.abs(y)) > 1e-9)) return null;
  const walls = sides.map(([x, y], i) => {
    const [a, b] = sides[(i + 1) % sides.length], turn = x * b - y * a;
    return { length: Math.hypot(x, y), corner: turn > 1e-9 ? "outer" : turn < -1e-9 ? "inner" : "" };
  });
  const exact = walls.every(w => w.corner && Math.abs(readQuantity(exactLength(w.length), "length", "").value - w.length) < 1e-9);
  return exact && turnsOf(walls) === 4 ? walls : null;
}

function openHouse(tree) {
  const house = nodeAt(tree, "routing.house"), walls = wallsFrom(nodeAt(house, "footprint"));
  if (entryOf(house, "width")) plain("house-form", "box");
  if (!walls) return;
  plain("house-form", "other");
  entryOf(house, "footprint").used = true;
  for (const wall of walls) {
    const thing = addThing(wallQuestion());
    plain("length", exactLength(wall.length), thing);
    plain("corner", wall.corner, thing);
  }
  // The front lies below on the plan.
  const up = /^(\d+(?:\.\d+)?) deg true$/.exec(nodeAt(tree, "routing.plan-up")?.text ?? "");
  if (!up || entryOf(house, "front")) return;
  plain("front", `${round((Number(up[1]) + 180) % 360, 6)} deg true`);
  take(nodeAt(tree, "routing"), "plan-up");
}

// A place may name a wall by its number.
function offerWalls() {
  const count = things(wallQuestion()).length;
  for (const select of document.querySelectorAll("select.wall")) {
    for (const old of [...select.options].filter(o => o.dataset.nth > count && !o.selected)) old.remove();
    for (let n = 1; n <= count; n++) if (![...select.options].some(o => o.value === `wall-${n}`)) addWall(select, n);
  }
}

function addWall(select, n) {
  const option = new Option(say("wall-number", { number: n }), `wall-${n}`);
  option.dataset.nth = n;
  select.add(option);
}

function make(name, into, values) {
  const e = into.appendChild(document.createElementNS("http://www.w3.org/2000/svg", name));
  for (const [key, value] of Object.entries(values)) e.setAttribute(key, value);
  return e;
}

// The plan as far as it goes, so that a slip is seen before it is read.
function drawWalls(q) {
  const walls = wallsSaid();
  q.querySelector(":scope > .plan")?.remove();
  if (!walls) return;
  const corners = cornersOf(walls), [xs, ys] = [0, 1].map(i => corners.map(c => c[i]));
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const size = Math.max(right - left, high - low), edge = size * 0.14, place = ([x, y]) => [x - left + edge, high - y + edge];
  const viewBox = [0, 0, right - left + 2 * edge, high - low + 2 * edge].join(" ");
  const sketch = make("svg", q, { class: "plan", role: "img", "aria-label": say("plan"), viewBox });
  make("polyline", sketch, { points: corners.map(c => place(c).join(",")).join(" "), "stroke-width": size * 0.012 });
  walls.forEach((wall, i) => {
    const [[x, y], [a, b]] = [corners[i], corners[i + 1]], [out, down] = [(b - y) / wall.length, -(a - x) / wall.length];
    const [px, py] = place([(x + a) / 2 + out * edge * 0.5, (y + b) / 2 + down * edge * 0.5]);
    make("text", sketch, { x: px, y: py + size * 0.025, "font-size": size * 0.075, "text-anchor": "middle" }).textContent = i + 1;
  });
  q.querySelector(":scope > .said").before(sketch);
}
