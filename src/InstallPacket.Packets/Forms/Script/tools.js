// The two tools: they work out what cannot be measured directly, and put it into the field that asked.
const toolWays = {
  height: {
    foot: v => heightFromFoot(v.distance, v.top, v.foot), eye: v => heightFromEye(v.eye, v.distance, v.top),
    step: v => v.near > v.far ? heightFromStep(v.eye, v.step, v.near, v.far) : NaN,
    shadow: v => heightFromShadow(v.stick, v["stick-shadow"], v.shadow),
  },
  bearing: {
    declination: v => trueFromDeclination(v.reading, v.declination), mark: v => trueFromMark(v.reading, v["mark-reading"], v["mark-true"]),
  },
};
let toolField = null;

function toolFields(dialog) {
  const way = [...dialog.querySelectorAll(".choices input")].find(r => r.checked)?.value;
  return [way, [...dialog.querySelectorAll(".tool-field")].filter(f => f.dataset.ways.split(" ").includes(way))];
}

function toolValue(field) {
  const box = field.querySelector("input");
  if (box.dataset.dimension === "angle") return readDegrees(box.value);
  return box.value.trim() ? readQuantity(box.value, "length", box.dataset.unit).value ?? NaN : NaN;
}

function toolResult(dialog) {
  const tool = dialog.id.slice("tool-".length), [way, fields] = toolFields(dialog);
  for (const field of dialog.querySelectorAll(".tool-field")) field.hidden = !fields.includes(field);
  const values = Object.fromEntries(fields.map(f => [f.dataset.field, toolValue(f)]));
  const result = way ? toolWays[tool][way](values) : NaN;
  return Number.isFinite(result) && result >= 0 ? { tool, way, values, result } : null;
}

function showTool(dialog) {
  const found = toolResult(dialog), line = dialog.querySelector(".result");
  dialog.querySelector(".take").disabled = !found;
  if (!found) line.textContent = say("tool-open");
  else if (found.tool === "bearing") line.textContent = say("tool-bearing", { degrees: round(found.result, 1) });
  else {
    const spread = found.way === "step" ? stepSpread(found.values.eye, found.values.step, found.values.near, found.values.far) : 0;
    const height = inUnit(found.result, "length", data.us ? "ft" : "m");
    line.textContent = say(spread > 0.15 * found.result ? "tool-height-far" : "tool-height", { height });
  }
}

function takeTool(dialog) {
  const found = toolResult(dialog);
  if (!found || !toolField) return;
  if (found.tool === "height") {
    toolField.value = inUnit(found.result, "length", data.us ? "ft" : "m");
  } else {
    const q = toolField.closest(".q");
    toolField.value = String(round(found.result, 1) % 360);
    choose(q, "true");
  }
  dialog.close();
  toolField.dispatchEvent(new Event("input", { bubbles: true }));
  toolField.focus();
}

function openTool(button) {
  const dialog = document.getElementById(`tool-${button.dataset.tool}`);
  toolField = button.parentElement.querySelector(":scope > .measure input");
  const ways = [...dialog.querySelectorAll(".choices input")];
  if (!ways.some(w => w.checked)) ways[0].checked = true;
  showTool(dialog);
  dialog.showModal();
}

function bindTools() {
  for (const dialog of document.querySelectorAll("dialog.tools")) {
    dialog.addEventListener("input", () => showTool(dialog));
    dialog.querySelector(".take").addEventListener("click", () => takeTool(dialog));
    dialog.querySelector(".close").addEventListener("click", () => dialog.close());
  }
}
