// The page: one section at a time, what is kept, and what is done with the job.
const at = id => document.getElementById(id);
const sections = () => [...document.querySelectorAll("main > section")];
let shown = 0, waiting = 0;

function show(number, focus = true) {
  shown = Math.min(Math.max(number, 0), sections().length - 1);
  sections().forEach((s, i) => { s.hidden = i !== shown; });
  at("back").disabled = shown === 0;
  at("next").disabled = shown === sections().length - 1;
  refresh();
  if (focus) {
    window.scrollTo(0, 0);
    sections()[shown].querySelector("h1").focus({ preventScroll: true });
  }
}

function refresh() {
  const all = review(), section = sections()[shown];
  at("where").textContent = section.querySelector("h1").textContent;
  const state = section.id === "s-check" ? "" : ` · ${sectionState(all[shown])[1]}`;
  at("count").textContent = say("count", { number: shown + 1, all: all.length }) + state;
  at("strip").replaceChildren(...all.map((found, i) => {
    const cell = document.createElement("i");
    cell.className = found.section.id === "s-check" ? "" : sectionState(found)[0];
    cell.classList.toggle("here", i === shown);
    return cell;
  }));
  if (section.id === "s-check") {
    listFindings(all, at("findings"), goTo);
    at("job").value = jobText();
  }
}

function goTo(q) {
  show(sections().findIndex(s => s.contains(q)), false);
  q.scrollIntoView({ block: "center" });
  q.querySelector("input, select, textarea, button")?.focus({ preventScroll: true });
}

function listSections() {
  const all = review();
  at("section-list").replaceChildren(...all.map((found, i) => {
    const item = document.createElement("li"), button = item.appendChild(document.createElement("button"));
    button.type = "button";
    button.append(found.section.querySelector("h1").textContent);
    if (found.section.id !== "s-check") button.appendChild(document.createElement("small")).textContent = sectionState(found)[1];
    button.classList.toggle("here", i === shown);
    button.addEventListener("click", () => { at("all-sections").close(); show(i); });
    return item;
  }));
  at("all-sections").showModal();
}

function keepSoon() {
  clearTimeout(waiting);
  waiting = setTimeout(keepNow, 150);
}

function keepNow() {
  clearTimeout(waiting);
  at("kept").textContent = say(keep());
}

function changed(e) {
  const q = e.target.closest(".q");
  if (!q) return;
  if (isUnknown(q)) setUnknown(q, false);
  delete q.dataset.kept;
  refresh();
  keepSoon();
}

function addUnit(button) {
  const field = button.parentElement.querySelector("input");
  if (/[\d/]$/.test(field.value.trim())) field.value = `${field.value.trim()} ${button.dataset.unit} `;
  field.dispatchEvent(new Event("input", { bubbles: true }));
  field.focus();
}

function locate(q) {
  const line = q.querySelector(":scope > .said"), fail = () => { line.textContent = say("locate-fails"); };
  if (!navigator.geolocation) return fail();
  navigator.geolocation.getCurrentPosition(({ coords }) => {
    const half = (value, positive, negative) => `${Math.abs(value).toFixed(5)} ${value < 0 ? negative : positive}`;
    input(q).value = `${half(coords.latitude, "N", "S")}, ${half(coords.longitude, "E", "W")}`;
    changed({ target: input(q) });
  }, fail, { enableHighAccuracy: true, timeout: 20000 });
}

function tapped(e) {
  const button = e.target.closest("button"), q = button?.closest(".q");
  if (!button || !q) return;
  if (button.classList.contains("unit")) return addUnit(button);
  if (button.classList.contains("tool")) return openTool(button);
  if (button.classList.contains("locate")) return locate(q);
  if (button.classList.contains("unknown")) setUnknown(q, !isUnknown(q));
  if (button.classList.contains("add")) addThing(q).querySelector("input, select").focus();
  if (button.classList.contains("remove")) removeThing(button);
  refresh();
  keepSoon();
}

// The second tap removes.
function removeThing(button) {
  if (!button.dataset.sure) {
    button.dataset.sure = "yes";
    button.textContent = say("remove-sure");
    return;
  }
  const thing = button.closest(".thing"), list = thing.parentElement.closest(".q");
  thing.remove();
  countThings(list);
}

const fileName = () => "job.yaml";
const done = text => { at("done").textContent = text; };

function save() {
  const href = URL.createObjectURL(new Blob([jobText()], { type: "application/yaml" }));
  const link = Object.assign(document.createElement("a"), { download: fileName(), href });
  link.click();
  setTimeout(() => URL.revokeObjectURL(href), 60000);
  done(say("saved"));
}

async function send() {
  const file = new File([jobText()], "job.yaml.txt", { type: "text/plain" });
  try {
    if (navigator.canShare?.({ files: [file] })) await navigator.share({ files: [file], title: answer("title") });
    else await navigator.share({ title: answer("title"), text: jobText() });
    done(say("sent"));
  } catch {
    done(say("send-fails"));
  }
}

async function copy() {
  try {
    await navigator.clipboard.writeText(jobText());
    done(say("copied"));
  } catch {
    at("job").focus();
    at("job").select();
    done(say("copy-fails"));
  }
}

function opened(text) {
  try {
    openJob(text);
    at("opened").textContent = say(kept.chain ? "opened-chain" : "opened", { count: kept.entries.length });
  } catch {
    at("opened").textContent = say("open-fails");
  }
  refresh();
  keepSoon();
}

function bind() {
  document.addEventListener("input", changed);
  document.querySelector("main").addEventListener("click", tapped);
  at("back").addEventListener("click", () => show(shown - 1));
  at("next").addEventListener("click", () => show(shown + 1));
  at("sections").addEventListener("click", listSections);
  at("close-sections").addEventListener("click", () => at("all-sections").close());
  for (const [id, deed] of [["save", save], ["send", send], ["copy", copy]]) at(id).addEventListener("click", deed);
  at("send").hidden = !navigator.share;
  at("open").addEventListener("click", () => opened(at("open-text").value));
  at("open-file").addEventListener("change", async e => { if (e.target.files[0]) opened(await e.target.files[0].text()); });
  at("forget").addEventListener("click", () => { forget(); show(0); });
  window.addEventListener("pagehide", () => { if (waiting) keepNow(); });
  window.addEventListener("storage", e => { if (e.key === storeName) at("kept").textContent = say("kept-twice"); });
}

for (const q of document.querySelectorAll("section[data-section]")) q.tabIndex = -1;
bind();
bindTools();
const recalled = recall();
show(0, false);
if (!recalled) at("kept").textContent = say("recall-fails");
// For tests and for the console of a browser.
window.surveyForm = {
  heightFromFoot, heightFromEye, heightFromStep, heightFromShadow, trueFromDeclination, trueFromMark, readQuantity, readCoordinates, inUnit, readYaml,
  jobText, openJob, slug, scalar, keptPaths: () => kept.entries.map(e => e.path.join(".")),
};
