// Keeps the answers in the browser: in its store, or in the address of the page where there is no store.
const storeName = `install-packet-form-1:${data.firm ?? ""}`;
const fieldName = field => field.type === "radio" || field.type === "checkbox" ? `${field.name}=${field.value}` : field.id;
const answerFields = () => [...document.querySelectorAll("main .q input, main .q select, main .q textarea")];

function snapshot() {
  const answered = f => f.type === "radio" || f.type === "checkbox" ? f.checked : f.value !== "";
  const values = answerFields().filter(answered).map(f => [fieldName(f), f.value]);
  const everyQuestion = [...document.querySelectorAll("main .q")];
  return {
    values: Object.fromEntries(values), kept,
    things: Object.fromEntries(lists().map(q => [q.dataset.q, things(q).map(t => [Number(t.dataset.number), t.dataset.name ?? ""])])),
    unknown: everyQuestion.filter(isUnknown).map(q => q.id),
    stays: Object.fromEntries(everyQuestion.filter(q => q.dataset.kept).map(q => [q.id, q.dataset.kept])),
  };
}

function restore(state) {
  clearAll();
  for (const q of lists()) for (const [number, name] of state.things[q.dataset.q] ?? []) {
    const thing = addThing(q, number);
    if (name) thing.dataset.name = name;
  }
  offerWalls();
  for (const field of answerFields()) {
    const value = state.values[fieldName(field)];
    if (value === undefined) continue;
    if (field.type === "radio" || field.type === "checkbox") field.checked = true;
    else field.value = value;
  }
  for (const id of state.unknown) setUnknown(document.getElementById(id), true);
  for (const [id, text] of Object.entries(state.stays)) document.getElementById(id).dataset.kept = text;
  kept = state.kept;
}

function keep() {
  const text = JSON.stringify(snapshot());
  try {
    localStorage.setItem(storeName, text);
    return "kept-store";
  } catch {
    try {
      history.replaceState(null, "", "#" + encodeURIComponent(text));
      return "kept-address";
    } catch {
      return "kept-nowhere";
    }
  }
}

function recall() {
  let text = null;
  try { text = localStorage.getItem(storeName); } catch { /* no store: the address may hold them */ }
  try {
    text ??= location.hash.length > 1 ? decodeURIComponent(location.hash.slice(1)) : null;
    if (text) restore(JSON.parse(text));
  } catch {
    clearAll();
    return false;
  }
  return true;
}

function forget() {
  clearAll();
  try { localStorage.removeItem(storeName); } catch { /* nothing was kept there */ }
  if (location.hash) history.replaceState(null, "", location.pathname);
}
