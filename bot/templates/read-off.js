// Reading off the chart: the day under the finger, or chosen with the slider, in words below it.
// Takes the hidden list beside a chart (`read_off.rs`). Without scripts the table of days says the same.
"use strict";
for (const list of document.querySelectorAll(".reads")) {
  const svg = list.previousElementSibling;
  const [days, ...things] = [...list.children].map((line) => ({ name: line.textContent, values: line.dataset.values.split("|") }));
  const at = Number(list.dataset.at);
  const step = Number(list.dataset.step);
  const last = days.values.length - 1;

  const here = document.createElementNS(svg.namespaceURI, "line");
  here.setAttribute("class", "here");
  here.setAttribute("y1", 0);
  here.setAttribute("y2", svg.viewBox.baseVal.height - 16);
  const slider = document.createElement("input");
  Object.assign(slider, { type: "range", min: 0, max: last, value: last });
  slider.setAttribute("aria-label", list.dataset.label);
  const said = document.createElement("output");
  const box = document.createElement("div");
  box.className = "read-off";
  box.append(slider, said);
  svg.parentElement.after(box);

  const read = () => {
    const day = Number(slider.value);
    const head = document.createElement("b");
    head.textContent = days.values[day];
    const told = things.filter((thing) => thing.values[day]).map((thing) => thing.name + ": " + thing.values[day]);
    said.replaceChildren(head, told.join(" · ") || "-");
    slider.setAttribute("aria-valuetext", days.values[day]);
    for (const end of ["x1", "x2"]) here.setAttribute(end, at + day * step);
    svg.append(here);
  };
  const follow = (event) => {
    const place = svg.getBoundingClientRect();
    const x = ((event.clientX - place.left) / place.width) * svg.viewBox.baseVal.width;
    slider.value = Math.round((x - at) / step);
    read();
  };
  slider.addEventListener("input", read);
  svg.addEventListener("pointermove", follow);
  svg.addEventListener("pointerdown", follow);
  read();
}
