// Reads the chain of a job back, if it is one that this form writes: head, block at the entry, perhaps inserter and splitter, outlets.
const entryOf = (node, key) => node?.map?.find(e => e.key === key);
const nodeAt = (tree, path) => path.split(".").reduce((node, key) => entryOf(node, key)?.node, tree);

const textOf = (node, key) => entryOf(node, key)?.node.text;

// The text of a key, which then counts as read.
function take(node, key) {
  const entry = entryOf(node, key);
  if (entry?.node.text === undefined) return "";
  entry.used = true;
  return entry.node.text;
}

class OtherChain extends Error {}

function fit(condition) {
  if (!condition) throw new OtherChain();
}

function plain(id, text, scope = document) {
  if (text) write(question(id, scope), text);
}

function takeRun(element, id, scope = document) {
  const run = entryOf(element, "run")?.node;
  fit(run === undefined || run.map);
  if (!run) return;
  fit(entryOf(run, "length"));
  for (const key of ["cable", "length", "way", "new-connectors"]) plain(`${id}-${key.replace("new-", "")}`, take(run, key), scope);
  plain(`${id}-existing`, take(run, "existing") || "no", scope);
}

function takeKits(tree, names, mountName) {
  for (const entry of nodeAt(tree, "kits")?.map ?? []) {
    const kit = entryOf(entry.node, "kit")?.node.text, antenna = input(question("antenna")), held = question("mount-kit");
    const offered = (select, value) => [...select.options].some(o => o.value === value);
    const more = [...(question("more-kits")?.querySelectorAll(".ticks input") ?? [])];
    if (offered(antenna, `kit:${kit}`)) { plain("antenna", `kit:${take(entry.node, "kit")}`); names.root = entry.key; }
    else if (held && offered(input(held), kit)) { plain("mount-kit", take(entry.node, "kit")); names.mountKit = entry.key; }
    else if (entry.node.map?.length === 1 && more.some(b => b.value === kit && !b.checked)) {
      writeTicks(question("more-kits"), [kit]);
      names[`kit ${kit}`] = entry.key;
      entry.used = true;
      continue;
    } else continue;
    for (const key of data.takes[kit]) { fit(entryOf(entry.node, key)?.node.text === mountName); take(entry.node, key); }
  }
}

function takeHead(tree, elements, names) {
  const fed = elements.filter(([, node]) => entryOf(node, "from"));
  const heads = elements.filter(([, node]) => !entryOf(node, "from"));
  fit(heads.length === (names.root ? 0 : 1));
  if (names.root) return [fed, names.root];
  const [[name, node]] = heads;
  names.antenna = name;
  fit(data.parts[entryOf(node, "part")?.node.text] === "antenna");
  plain("antenna", `part:${take(node, "part")}`);
  if (nodeAt(tree, `routing.places.${names.mount}.room`) && entryOf(node, "at")?.node.text === names.mount) take(node, "at");
  const amplifier = fed.find(([, n]) => textOf(n, "from") === name && data.parts[textOf(n, "part")] === "amplifier");
  if (!amplifier) return [fed, name];
  const run = entryOf(amplifier[1], "run")?.node;
  fit(run?.map && entryOf(run, "length") && take(run, "way") === "outside" && take(amplifier[1], "at") === names.mount);
  plain("amplifier", take(amplifier[1], "part"));
  plain("amplifier-lead", take(run, "length"));
  take(amplifier[1], "from");
  names.amplifier = amplifier[0];
  return [fed.filter(f => f !== amplifier), amplifier[0]];
}

// The element of a kind that is fed by another; it is taken out of the list.
function takeFed(elements, from, kind) {
  const at = elements.findIndex(([, n]) => textOf(n, "from") === from && kind.includes(data.parts[textOf(n, "part")]));
  if (at < 0) return null;
  const [[name, node]] = elements.splice(at, 1);
  take(node, "from");
  return [name, node];
}

function takePanel(tree, elements, names, from) {
  const inserter = takeFed(elements, from, ["power-inserter"]), splitter = takeFed(elements, inserter?.[0] ?? from, ["splitter"]);
  const first = inserter ?? splitter;
  if (first) {
    names.panel = take(first[1], "at");
    plain("panel-room", take(nodeAt(tree, `routing.places.${names.panel}`), "room"));
    takeRun(first[1], "panel");
  }
  if (inserter) { names.inserter = inserter[0]; plain("inserter", take(inserter[1], "part")); }
  if (splitter) {
    names.splitter = splitter[0];
    plain("splitter", take(splitter[1], "part"));
    fit(splitter === first || !entryOf(splitter[1], "run"));
  }
  return splitter?.[0] ?? inserter?.[0] ?? from;
}

function takeOutlets(tree, elements, feeder, shared) {
  elements.forEach(([name, node], i) => {
    fit(entryOf(node, "outlet") && take(node, "from") === (shared ? `${feeder}.${i + 1}` : feeder));
    const thing = addThing(question("outlets"));
    thing.dataset.name = name;
    plain("room", take(node, "outlet"), thing);
    takeOutletPlace(tree, name, node, thing);
    plain("existing", take(node, "existing") || "no", thing);
    takeRun(node, "run", thing);
  });
}

function takeOutletPlace(tree, name, node, thing) {
  const places = nodeAt(tree, "routing.places"), at = name.toLowerCase();
  if (textOf(node, "at") !== at || textOf(places, at) === undefined) return;
  take(node, "at");
  plain("at", take(places, at), thing);
}

function takeBlock(tree, elements, names, root) {
  const [name, node] = takeFed(elements, root, ["grounding-block", "surge-protector"]) ?? fit(false);
  const drips = entryOf(entryOf(node, "run")?.node, "drip-loops");
  [names.block, names.entry] = [name, take(node, "at")];
  plain("block", take(node, "part"));
  takeRun(node, "down");
  fit(!drips || drips.node.list?.length === 1 && drips.node.list[0].text === names.entry);
  if (drips) drips.used = true;
  if (answer("down-existing") === "no") plain("drip-loop", drips ? "yes" : "no");
  takePlace(tree, "entry", names.entry);
  const entry = nodeAt(tree, `routing.entries.${names.entry}`);
  plain("entry-through", take(entry, "through"));
  plain("entry-existing", entry ? take(entry, "existing") || "no" : "");
}

// A place on a wall, or where nobody measured.
function takePlace(tree, id, name) {
  const places = nodeAt(tree, "routing.places");
  plain(`${id}-at`, take(places, name));
  plain(`${id}-where`, take(entryOf(places, name)?.node, "room"));
}

// Where the antenna stands, as mount, kit or antenna say it.
function mountPlace(tree) {
  const root = nodeAt(tree, "cabling.chain")?.map?.find(e => e.node.map && !entryOf(e.node, "from"));
  const kit = nodeAt(tree, "kits")?.map?.find(e => textOf(e.node, "at"));
  return textOf(nodeAt(tree, "mounting"), "at") ?? textOf(root?.node, "at") ?? textOf(kit?.node, "at") ?? "mount";
}

function readChain(tree) {
  const names = { mount: mountPlace(tree) };
  takeKits(tree, names, names.mount);
  const chain = nodeAt(tree, "cabling.chain")?.map ?? [];
  if (chain.length > 0 || names.root) {
    fit(chain.every(e => e.node.map));
    const [elements, root] = takeHead(tree, chain.map(e => [e.key, e.node]), names);
    if (elements.length > 0) {
      takeBlock(tree, elements, names, root);
      takeOutlets(tree, elements, takePanel(tree, elements, names, names.block), Boolean(names.splitter));
    }
  }
  take(nodeAt(tree, "mounting"), "at");
  takePlace(tree, "mount", names.mount);
  kept.names = Object.fromEntries(Object.entries(names).filter(([, name]) => name));
}
