// Reads a job file into a tree that still knows its text: what the form does not ask about goes back as it stood.
// A node is { map: [entry] }, { list: [node] }, { text } or { opaque: true }; an entry is { key, node, lines, comments, remark }.
const keyForm = /^(\s*)("(?:[^"\\]|\\.)*"|'(?:[^']|'')*'|[^\s#"'{}\[\],&*!|>%@`-][^#]*?|-[^\s#][^#]*?)\s*:(?:\s+(.*))?$/;
const indentOf = line => line.length - line.trimStart().length;
const isBlank = line => line.trim() === "";
const isComment = line => line.trimStart().startsWith("#");

function readYaml(text) {
  return blockMap(text.replace(/^\ufeff/, "").replace(/\r\n?/g, "\n").split("\n").map(l => l.trimEnd()));
}

function blockMap(lines) {
  const map = [], indent = Math.min(...lines.filter(l => !isBlank(l) && !isComment(l)).map(indentOf));
  let comments = [];
  for (let i = 0; i < lines.length;) {
    const line = lines[i++];
    if (isBlank(line)) continue;
    if (isComment(line)) { comments.push(line.trim()); continue; }
    const m = keyForm.exec(line);
    if (!m || indentOf(line) !== indent) throw new Error(line.trim());
    const from = i;
    const belongs = l => isBlank(l) || indentOf(l) > indent || (indentOf(l) === indent && l.trimStart().startsWith("- "));
    while (i < lines.length && belongs(lines[i])) i++;
    while (i > from && (isBlank(lines[i - 1]) || (isComment(lines[i - 1]) && indentOf(lines[i - 1]) <= indent))) i--;
    const [value, remark] = splitRemark(m[3] ?? "");
    const body = lines.slice(from, i), own = [line, ...body].map(l => l.slice(Math.min(indent, indentOf(l))));
    map.push({ key: unquoted(m[2]), node: valueOf(value, body), lines: own, comments, remark });
    comments = [];
  }
  return { map, tail: comments };
}

function valueOf(first, body) {
  try {
    const full = body.filter(l => !isBlank(l) && !isComment(l));
    if (/^[|>&*!]/.test(first)) return { opaque: true };
    const start = first || (full[0] ?? "").trim();
    if (/^[{[]/.test(start)) return readFlow([first, ...full.map(l => splitRemark(l)[0])].join("\n"));
    if (!first && start.startsWith("- ")) return blockList(body);
    if (!first && full.length > 0 && keyForm.test(full[0])) return blockMap(body);
    return { text: unquoted([first, ...full.map(l => splitRemark(l.trim())[0])].join(" ").trim()) };
  } catch {
    return { opaque: true };
  }
}

function blockList(lines) {
  const list = [], full = lines.filter(l => !isBlank(l) && !isComment(l)), indent = indentOf(full[0]);
  for (let i = 0; i < full.length;) {
    const start = full[i++], body = [" ".repeat(indent + 2) + start.trimStart().slice(2).trimStart()];
    while (i < full.length && indentOf(full[i]) > indent) body.push(full[i++]);
    const item = body[0].trim();
    list.push(/^[{["']/.test(item) || !keyForm.test(body[0]) ? valueOf(item, body.slice(1)) : blockMap(body));
  }
  return { list };
}

// A remark begins at a # after a blank, outside quotes.
function splitRemark(text) {
  for (let i = 0, quote = ""; i < text.length; i++) {
    const c = text[i];
    if (quote) { if (c === "\\" && quote === "\"") i++; else if (c === quote) quote = ""; }
    else if ((c === "\"" || c === "'") && /(^|[\s,:{[])$/.test(text.slice(0, i))) quote = c;
    else if (c === "#" && (i === 0 || /\s/.test(text[i - 1]))) return [text.slice(0, i).trimEnd(), text.slice(i)];
  }
  return [text.trimEnd(), ""];
}

function unquoted(text) {
  if (text.startsWith("\"")) return JSON.parse(text);
  return text.startsWith("'") ? text.slice(1, -1).replace(/''/g, "'") : text;
}

function readFlow(text) {
  const reader = { text, at: 0 };
  const node = flowValue(reader);
  skipBlank(reader);
  if (reader.at < text.length) throw new Error(text);
  return node;
}

function skipBlank(reader) {
  while (/\s/.test(reader.text[reader.at] ?? "")) reader.at++;
}

function flowValue(reader) {
  skipBlank(reader);
  const c = reader.text[reader.at];
  if (c === "{") return flowMap(reader);
  if (c === "[") return flowList(reader);
  return { text: flowScalar(reader) };
}

function flowScalar(reader) {
  const rest = reader.text.slice(reader.at);
  const m = /^"(?:[^"\\]|\\.)*"|^'(?:[^']|'')*'|^[^,{}[\]\n]*?(?=\s*(?:[,{}[\]\n]|:\s|:$|$))/.exec(rest);
  if (!m) throw new Error(rest);
  reader.at += m[0].length;
  return unquoted(m[0].trim());
}

function flowMap(reader) {
  const map = [];
  for (reader.at++; ;) {
    skipBlank(reader);
    if (reader.text[reader.at] === "}") { reader.at++; return { map, tail: [] }; }
    const key = flowScalar(reader);
    skipBlank(reader);
    if (reader.text[reader.at++] !== ":") throw new Error(key);
    skipBlank(reader);
    const from = reader.at, node = flowValue(reader);
    map.push({ key, node, lines: [`${key}: ${reader.text.slice(from, reader.at).replace(/\s+/g, " ")}`], comments: [], remark: "" });
    flowNext(reader, "}");
  }
}

function flowList(reader) {
  const list = [];
  for (reader.at++; ;) {
    skipBlank(reader);
    if (reader.text[reader.at] === "]") { reader.at++; return { list }; }
    list.push(flowValue(reader));
    flowNext(reader, "]");
  }
}

function flowNext(reader, end) {
  skipBlank(reader);
  const c = reader.text[reader.at];
  if (c === ",") reader.at++;
  else if (c !== end) throw new Error(reader.text.slice(reader.at));
}
