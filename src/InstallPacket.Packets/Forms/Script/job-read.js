// Opens a job: what the form asks goes into its fields, everything else is kept as it stands and written back.
const nothingKept = () => ({ entries: [], remarks: [], names: {}, chain: false, schema: "" });
let kept = nothingKept();

function clearAll() {
  for (const list of lists()) list.querySelector(".things").replaceChildren();
  for (const q of questionsIn(document)) { empty(q); setUnknown(q, false); delete q.dataset.kept; }
  kept = nothingKept();
}

function takePlain(tree, q, path, node = nodeAt(tree, path)) {
  const keys = path.split("."), holder = keys.length > 1 ? nodeAt(tree, keys.slice(0, -1).join(".")) : tree;
  if (node?.text !== undefined) write(q, take(holder, keys.at(-1)));
}

function takeThing(q, node, name) {
  const thing = addThing(q);
  if (name) { thing.dataset.name = name; plain("name", question("name", thing) ? name : "", thing); }
  for (const each of questionsIn(thing).filter(e => e.dataset.path && entryOf(node, lastKey(e))))
    plain(each.dataset.q, take(node, lastKey(each)), thing);
}

function takeList(tree, q) {
  const path = q.dataset.path, entry = entryOf(nodeAt(tree, path.slice(0, path.lastIndexOf("."))), lastKey(q)), node = entry?.node;
  if (q.dataset.rows !== undefined) {
    // A list is taken whole or not at all: half a fixing is no fixing.
    const asked = [...q.querySelector("template").content.querySelectorAll(".q[data-path]")].map(lastKey);
    if (!node?.list?.every(item => item.map?.every(e => asked.includes(e.key) && e.node.text !== undefined))) return;
    node.list.forEach(item => takeThing(q, item));
    entry.used = true;
  } else if (node?.map) {
    choose(q, node.map.length ? "some" : "none");
    if (!node.map.length) entry.used = true;
    node.map.forEach(e => takeThing(q, e.node, e.key));
  }
}

function takeWant(tree) {
  const entry = entryOf(nodeAt(tree, "reception"), "want");
  if (!entry?.node.list?.every(n => n.text !== undefined)) return;
  write(question("want"), entry.node.list.map(n => n.text));
  entry.used = true;
}

// What nobody took, at the highest place where all of it is left.
function leftover(map, path, into) {
  const touched = e => e.used || e.node.map?.some(touched);
  for (const entry of map) {
    if (entry.remark && touched(entry)) into.remarks.push(entry.remark);
    if (touched(entry)) into.remarks.push(...entry.comments);
    if (entry.used) continue;
    if (touched(entry)) leftover(entry.node.map, [...path, entry.key], into);
    else into.entries.push({ path: [...path, entry.key], lines: [...entry.comments, ...entry.lines] });
    into.remarks.push(...(touched(entry) ? entry.node.tail ?? [] : []));
  }
}

function takeRemarks() {
  // The first line of the file names its schema, and goes back there.
  kept.schema = kept.remarks.find(r => r.startsWith(schemaWord)) ?? "";
  kept.remarks = kept.remarks.filter(r => !r.startsWith(schemaWord));
  const own = kept.remarks.filter(r => r.startsWith(unknownWord) || r.startsWith(photoWord));
  kept.remarks = kept.remarks.filter(r => !own.includes(r));
  for (const remark of own) {
    if (remark.startsWith(unknownWord)) markUnknown(remark.slice(unknownWord.length).split(", "));
    else {
      const [shows, file] = remark.slice(photoWord.length).split(" = "), thing = addThing(question("photos"));
      plain("shows", shows, thing);
      plain("file", file, thing);
    }
  }
}

function markUnknown(labels) {
  const mark = (scope, name) => questionsIn(scope).filter(q => unknownButton(q) && !read(q) && labels.includes(labelOf(q, name)))
    .forEach(q => setUnknown(q, true));
  mark(document);
  for (const list of lists()) things(list).forEach((thing, i) => mark(thing, isNumbered(list) ? i + 1 : thing.dataset.name || i + 1));
}

// A gate stands open when something behind it is answered.
function openGates(scope) {
  const all = questionsIn(scope);
  for (const gate of all.filter(q => q.dataset.gate !== undefined)) {
    const behind = all.filter(q => (q.dataset.when ?? "").split(";").includes(`${gate.dataset.q}=yes`));
    if (behind.some(q => read(q))) choose(gate, "yes");
  }
}

// What the form would not ask with these answers stays with the file.
function giveBack(tree) {
  const unasked = questionsIn(document).filter(q => q.dataset.path && !isAsked(q) && read(q));
  for (const q of unasked) {
    const keys = q.dataset.path.split("."), entry = entryOf(nodeAt(tree, keys.slice(0, -1).join(".")), keys.at(-1));
    if (entry) entry.used = false;
    q.querySelector(":scope > .things")?.replaceChildren();
    empty(q);
    delete q.dataset.kept;
  }
  if (unasked.length) giveBack(tree);
}

// Throws when the text cannot be read as a job; the answers are then as they were.
function openJob(text) {
  let tree = readYaml(text);
  if (!entryOf(tree, "format") || tree.map.some(e => e.node.opaque && topOrder.includes(e.key))) throw new Error("format");
  clearAll();
  let chain = false;
  openHouse(tree);
  try {
    readChain(tree);
  } catch (e) {
    if (!(e instanceof OtherChain)) throw e;
    [chain, tree] = [true, readYaml(text)];
    clearAll();
    openHouse(tree);
  }
  kept.chain = chain;
  take(tree, "format");
  if (data.firm === nodeAt(tree, "firm")?.text) take(tree, "firm");
  for (const q of questionsIn(document).filter(q => q.dataset.path)) {
    if (q.querySelector(":scope > .things")) takeList(tree, q);
    else takePlain(tree, q, q.dataset.path);
  }
  takeWant(tree);
  for (const scope of [document, ...lists().flatMap(things)]) openGates(scope);
  giveBack(tree);
  leftover(tree.map, [], kept);
  kept.remarks.push(...tree.tail);
  takeRemarks();
}
