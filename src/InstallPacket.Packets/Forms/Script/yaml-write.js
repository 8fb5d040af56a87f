// Writes a job. A tree is a Map of keys to trees, lists, texts, or { lines }: lines of a file that go back as they stood.
const widest = 138;

function put(tree, path, value) {
  const keys = typeof path === "string" ? path.split(".") : path;
  for (const key of keys.slice(0, -1)) {
    if (!(tree.get(key) instanceof Map)) tree.set(key, new Map());
    tree = tree.get(key);
  }
  tree.set(keys.at(-1), value);
}

// Plain where no reader can take it for anything else; otherwise in double quotes.
function scalar(text) {
  const safe = /^[\p{L}\p{N}][\p{L}\p{N} .,;()'\/+%°_-]*$/u.test(text) && !/[,\s]$/.test(text);
  return safe && !text.includes(",") ? text : JSON.stringify(text.replace(/[\u0000-\u001f\u2028\u2029]+/g, " "));
}

// A text on a line of its own may hold commas.
const ownLine = text => /^[\p{L}\p{N}][\p{L}\p{N} .,;()'\/+%°_-]*$/u.test(text) && !/[,\s]$/.test(text) ? text : scalar(text);

function flow(node) {
  if (typeof node === "string") return scalar(node);
  if (Array.isArray(node)) return node.every(n => flow(n) !== null) ? `[${node.map(flow).join(", ")}]` : null;
  if (!(node instanceof Map)) return node.lines.length === 1 ? node.lines[0].slice(node.lines[0].indexOf(":") + 1).trim() : null;
  const parts = [...node].map(([key, value]) => [key, value.lines ? /#/.test(value.lines[0]) ? null : flow(value) : flow(value)]);
  if (parts.some(([, text]) => text === null)) return null;
  return parts.length ? `{ ${parts.map(([key, text]) => `${key}: ${text}`).join(", ")} }` : "{}";
}

function entryLines(key, node, indent, top) {
  const pad = " ".repeat(indent);
  if (node.lines) return node.lines.map(l => l === "" ? "" : pad + l);
  if (typeof node === "string") return [`${pad}${key}: ${ownLine(node)}`];
  const text = flow(node), deep = top && node instanceof Map && [...node.values()].some(v => v instanceof Map && v.size > 0);
  if (text !== null && !deep && pad.length + key.length + 2 + text.length <= widest) return [`${pad}${key}: ${text}`];
  if (Array.isArray(node)) return [`${pad}${key}:`, ...node.map(item => `${pad}  - ${flow(item)}`)];
  return [`${pad}${key}:`, ...[...node].flatMap(([k, v]) => entryLines(k, v, indent + 2, false))];
}

const topOrder = [
  "format", "title", "date", "firm", "code", "prepared-by", "customer", "siting", "reception", "routing", "kits", "cabling", "mounting", "bonding",
  "handover",
];

function writeYaml(tree, comments) {
  const rank = key => topOrder.includes(key) ? topOrder.indexOf(key) : topOrder.length;
  const entries = [...tree].map((e, i) => [...e, i]).sort((a, b) => rank(a[0]) - rank(b[0]) || a[2] - b[2]);
  const blocks = entries.map(([key, node]) => entryLines(key, node, 0, true));
  // A blank line sets apart what takes more than one.
  const lines = blocks.flatMap((own, i) => i > 0 && (own.length > 1 || blocks[i - 1].length > 1) ? ["", ...own] : own);
  return [...lines, ...(comments.length ? ["", ...comments] : [])].join("\n").replace(/\n{3,}/g, "\n\n") + "\n";
}
