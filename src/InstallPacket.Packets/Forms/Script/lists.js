// Things of which there may be any number: each is a copy of the questions in the template.
const things = q => [...q.querySelector(".things").children];

function addThing(q, number = Math.max(0, ...things(q).map(t => Number(t.dataset.number))) + 1) {
  const holder = document.createElement("div");
  holder.innerHTML = q.querySelector("template").innerHTML.replaceAll("-NUMBER", `-${number}`);
  const thing = q.querySelector(".things").appendChild(holder.firstElementChild);
  thing.dataset.number = number;
  countThings(q);
  return thing;
}

function countThings(q) {
  things(q).forEach((thing, i) => { thing.querySelector(".nth").textContent = i + 1; });
}

const lists = () => questionsIn(document).filter(q => q.querySelector(":scope > .things"));

// A name as the job file takes it: letters without accents, digits and hyphens, each only once.
function slug(text, taken) {
  const plainText = text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase();
  const base = plainText.replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "").slice(0, 36) || "one";
  let name = base;
  for (let i = 2; taken.has(name); i++) name = `${base}-${i}`;
  taken.add(name);
  return name;
}

// Each thing with the name that the job gives it.
function named(q, by) {
  const taken = new Set(things(q).map(t => t.dataset.name).filter(Boolean));
  return things(q).map(thing => [thing, thing.dataset.name || slug(answer(by, thing), taken)]);
}
