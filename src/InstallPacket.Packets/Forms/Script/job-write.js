// The answers as a job file.
const unknownWord = "# Not known: ", photoWord = "# Photo: ", schemaWord = "# yaml-language-server:";
const lastKey = q => q.dataset.path.split(".").at(-1);

// Where an answer stands in the job, for people and for opening it again.
function labelOf(q, thingName) {
  const list = q.parentElement.closest(".things")?.closest(".q");
  const own = q.dataset.path ? (list ? lastKey(q) : q.dataset.path) : q.dataset.q;
  return list ? `${list.dataset.path ?? list.dataset.q}.${thingName}.${own}` : own;
}

const namedBy = list => list.dataset.q === "wires" ? "what" : "name";
const isNumbered = list => list.dataset.rows !== undefined || !list.dataset.path;

function thingTree(thing) {
  const tree = new Map();
  for (const q of questionsIn(thing)) if (q.dataset.path && isAsked(q) && read(q)?.text) tree.set(lastKey(q), read(q).text);
  return tree;
}

function writeList(job, q) {
  const none = q.dataset.kind === "list-or-none" && chosen(q) !== "some";
  if (none) return chosen(q) === "none" ? put(job, q.dataset.path, new Map()) : undefined;
  if (q.dataset.rows !== undefined) {
    const items = things(q).map(thingTree).filter(t => t.size > 0);
    return items.length ? put(job, q.dataset.path, items) : undefined;
  }
  for (const [thing, name] of named(q, namedBy(q))) {
    const tree = thingTree(thing);
    if (tree.size > 0) put(job, [...q.dataset.path.split("."), name], tree);
  }
}

function writeAnswers(job) {
  for (const q of questionsIn(document)) {
    if (q.dataset.q === "walls" && footprint()) put(job, "routing.house.footprint", footprint());
    if (!q.dataset.path || !isAsked(q)) continue;
    const answered = read(q);
    if (q.querySelector(":scope > .things")) writeList(job, q);
    else if (answered?.text && !answered.problem) put(job, q.dataset.path, answered.text);
  }
  const want = read(question("want"));
  if (want) put(job, "reception.want", want.words ?? want.text);
}

function unknowns() {
  const of = (scope, name) => questionsIn(scope).filter(q => isAsked(q) && isUnknown(q)).map(q => labelOf(q, name));
  const inThings = lists().filter(isAsked).flatMap(list => (isNumbered(list) ? things(list).map((t, i) => [t, i + 1]) : named(list, namedBy(list)))
    .flatMap(([thing, name]) => of(thing, name)));
  return [...of(document), ...inThings];
}

function ownRemarks() {
  const unknown = unknowns(), photos = things(question("photos"));
  return [...(unknown.length ? [unknownWord + unknown.join(", ")] : []),
    ...photos.filter(t => answer("shows", t)).map(t => `${photoWord}${answer("shows", t)} = ${answer("file", t)}`)];
}

function jobText() {
  const job = new Map([["format", "1"]]);
  if (data.firm) job.set("firm", data.firm);
  writeAnswers(job);
  writeChain(job);
  for (const { path, lines } of kept.entries) put(job, path, { lines });
  return `${kept.schema || data.schema}\n${writeYaml(job, [...ownRemarks(), ...kept.remarks])}`;
}
