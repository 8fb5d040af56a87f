// Numbers and units as a person writes them, and as a job file writes them.
const data = JSON.parse(document.getElementById("form-data").textContent);

function say(id, values = {}) {
  const text = data.said[id];
  if (text === undefined) throw new Error(`no text form.said.${id}`);
  return text.replace(/\[(\w+)\]/g, (_, name) => values[name]);
}

// A decimal comma, typographic signs and marks of feet and inches become what a job file writes.
function tidy(text) {
  return text.trim().replace(/\u2212/g, "-").replace(/(\d),(\d)/g, "$1.$2").replace(/[\u00a0\u202f]/g, " ")
    .replace(/\s*(?:''|["\u2033\u201d])/g, " in").replace(/\s*['\u2032\u2019]/g, " ft ")
    .replace(/(\d)([a-z])/gi, "$1 $2").replace(/\s+/g, " ").trim();
}

const numberForm = /^([+-]?)(?:(\d+(?:\.\d+)?)(?:[ -](\d+)\/(\d+))?|(\d+)\/(\d+))(?= |$)/;

function leadingNumber(text) {
  const m = numberForm.exec(text);
  if (!m) return null;
  const [, sign, whole, top, bottom, aloneTop, aloneBottom] = m;
  const size = aloneTop ? aloneTop / aloneBottom : Number(whole) + (top ? top / bottom : 0);
  return Number.isFinite(size) ? { value: sign === "-" ? -size : size, negative: sign === "-", length: m[0].length } : null;
}

// The value in the stored unit of the dimension and the text for the job; or what is wrong with it.
function readQuantity(written, dimension, usual) {
  let rest = tidy(written), total = 0, negative = false;
  const units = new Map(data.units[dimension].map(([name, factor, offset]) => [name, { factor, offset }]));
  const said = [];
  while (rest.length > 0 || said.length === 0) {
    const number = leadingNumber(rest);
    if (!number || (said.length > 0 && number.negative)) return { problem: "no-number" };
    const figure = rest.slice(0, number.length);
    rest = rest.slice(number.length).trim();
    const name = [...units.keys()].sort((a, b) => b.length - a.length).find(u => rest === u || rest.startsWith(u + " "));
    if (!name && /^[^\d]/.test(rest)) return { problem: "no-unit", unit: rest.split(" ")[0] };
    const unit = name ?? (said.length > 0 ? "in" : usual);
    rest = name ? rest.slice(name.length).trim() : rest;
    if (said.length > 0 && (said.length > 1 || said[0].unit !== "ft" || unit !== "in")) return { problem: "no-number" };
    if (said.length === 0) negative = number.negative;
    const value = number.value * units.get(unit).factor + units.get(unit).offset;
    total += said.length > 0 && negative ? -value : value;
    said.push({ figure, unit });
  }
  return { value: total, text: said.map(s => `${s.figure} ${s.unit}`).join(" ") };
}

function round(value, places) {
  const rounded = Number(value.toFixed(places));
  return Object.is(rounded, -0) ? 0 : rounded;
}

// A stored value in a unit, as a person reads it and as a field takes it back.
function inUnit(value, dimension, unit) {
  if (unit === "ft") return feetText(value / 0.3048);
  const [, factor, offset] = data.units[dimension].find(([name]) => name === unit);
  return `${round((value - offset) / factor, unit === "m" ? 2 : 1)} ${unit}`;
}

function feetText(feet) {
  const inches = Math.round(Math.abs(feet) * 12), sign = feet < 0 && inches > 0 ? "-" : "";
  const [ft, rest] = [Math.floor(inches / 12), inches % 12];
  return `${sign}${ft} ft${rest ? ` ${rest} in` : ""}`;
}

function readDegrees(written) {
  const text = tidy(written).replace(/\s*(deg|°)$/, "");
  return /^-?\d{1,3}(\.\d{1,6})?$/.test(text) ? Number(text) : NaN;
}

// "43.63 N, 99.15 W", also with a minus sign in place of the letter.
function readCoordinates(written) {
  const text = written.trim().replace(/\u2212/g, "-").replace(/°/g, " ").replace(/(\d),(\d{3,}\b)/g, "$1.$2");
  const m = /^(-?\d{1,2}(?:\.\d+)?)\s*([NS]?)[\s,;]+(-?\d{1,3}(?:\.\d+)?)\s*([EW]?)$/i.exec(text);
  if (!m) return { problem: "no-place" };
  const half = (number, letter, positive, negative) => (letter || (number < 0 ? negative : positive)).toUpperCase();
  const places = Math.min(...[m[1], m[3]].map(n => (n.split(".")[1] ?? "").length));
  const figures = [m[1], m[3]].map(n => n.replace("-", ""));
  if (figures[0] > 90 || figures[1] > 180 || (m[2] && m[1] < 0) || (m[4] && m[3] < 0)) return { problem: "no-place" };
  return { text: `${figures[0]} ${half(m[1], m[2], "N", "S")}, ${figures[1]} ${half(m[3], m[4], "E", "W")}`, coarse: places < 3 };
}
