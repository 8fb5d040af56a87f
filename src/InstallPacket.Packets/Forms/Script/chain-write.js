// The chain from the antenna to the outlets, the places that it needs, and the kits.
const usualNames = {
  root: "top", antenna: "A1", amplifier: "P1", mountKit: "held", mount: "mount", entry: "box", panel: "panel", block: "G1", inserter: "I1",
  splitter: "S1",
};

function runOf(id, scope = document) {
  const run = new Map(), get = name => answer(`${id}-${name}`, scope);
  if (get("cable")) run.set("cable", get("cable"));
  if (get("length")) run.set("length", get("length"));
  if (get("existing") === "yes") run.set("existing", "yes");
  if (get("way")) run.set("way", get("way"));
  if (get("connectors") === "yes") run.set("new-connectors", "yes");
  return run;
}

function element(job, name, keys) {
  for (const [key, value] of Object.entries(keys)) if (value) put(job, ["cabling", "chain", name, key], value);
}

function writeHead(job, names) {
  const [form, id] = answer("antenna").split(":");
  if (!form) return names.root;
  if (form === "kit") {
    put(job, ["kits", names.root, "kit"], id);
    for (const take of data.takes[id] ?? []) put(job, ["kits", names.root, take], names.mount);
    return names.root;
  }
  element(job, names.antenna, { part: id, at: answer("mount-where") && names.mount });
  if (!answer("amplifier")) return names.antenna;
  const lead = new Map([["length", answer("amplifier-lead")], ["way", "outside"]]);
  element(job, names.amplifier, { part: answer("amplifier"), at: names.mount, from: names.antenna, run: lead });
  return names.amplifier;
}

function writePlaces(job, names) {
  for (const [id, name] of [["mount", names.mount], ["entry", names.entry]]) {
    if (answer(`${id}-at`)) put(job, ["routing", "places", name], answer(`${id}-at`));
    if (answer(`${id}-where`)) put(job, ["routing", "places", name, "room"], answer(`${id}-where`));
  }
  if (answer("mount-at")) put(job, "mounting.at", names.mount);
  if (answer("panel-room")) put(job, ["routing", "places", names.panel, "room"], answer("panel-room"));
  if (answer("entry-through")) put(job, ["routing", "entries", names.entry, "through"], answer("entry-through"));
  if (answer("entry-existing") === "yes") put(job, ["routing", "entries", names.entry, "existing"], "yes");
}

// What is screwed to the part before it has neither a place nor a run of its own.
function writePanel(job, names, from) {
  const run = runOf("panel");
  if (answer("inserter")) element(job, names.inserter, { part: answer("inserter"), at: names.panel, from, run });
  if (!answer("splitter")) return answer("inserter") ? names.inserter : from;
  if (answer("inserter")) element(job, names.splitter, { part: answer("splitter"), from: names.inserter });
  else element(job, names.splitter, { part: answer("splitter"), at: names.panel, from, run });
  return names.splitter;
}

function writeKits(job, names) {
  if (answer("mount-kit")) {
    put(job, ["kits", names.mountKit, "kit"], answer("mount-kit"));
    for (const take of data.takes[answer("mount-kit")] ?? []) put(job, ["kits", names.mountKit, take], names.mount);
  }
  const more = question("more-kits") && read(question("more-kits"))?.words;
  for (const kit of more ?? []) put(job, ["kits", names[`kit ${kit}`] ?? kit, "kit"], kit);
}

// The place of an outlet is called like the outlet.
function writeOutlets(job, feeder, shared) {
  const all = things(question("outlets")), taken = new Set(all.map(t => t.dataset.name).filter(Boolean));
  all.forEach((thing, i) => {
    let number = i + 1;
    while (!thing.dataset.name && taken.has(`TV${number}`)) number++;
    const name = thing.dataset.name || `TV${number}`, at = answer("at", thing);
    taken.add(name);
    if (at) put(job, ["routing", "places", name.toLowerCase()], at);
    element(job, name, {
      outlet: answer("room", thing), at: at && name.toLowerCase(), from: shared ? `${feeder}.${i + 1}` : feeder,
      existing: answer("existing", thing) === "yes" && "yes", run: runOf("run", thing),
    });
  });
}

function writeChain(job) {
  if (kept.chain) return;
  const names = { ...usualNames, ...kept.names };
  writePlaces(job, names);
  const root = writeHead(job, names);
  writeKits(job, names);
  const down = runOf("down");
  if (answer("drip-loop") === "yes") down.set("drip-loops", [names.entry]);
  if (answer("block")) element(job, names.block, { part: answer("block"), at: names.entry, from: root, run: down });
  const feeder = writePanel(job, names, answer("block") ? names.block : root), shared = answer("splitter") !== "";
  writeOutlets(job, feeder, shared);
}
