// Another soak than the one advised, moved along its chart by a slider or with the pointer; all that
// is shown was reckoned with the answer. Without this it is chosen from a list.
(() => {
  const form = () => document.getElementById("whatif");
  const rows = () => [...document.querySelectorAll("tr[data-soak]")];
  let wanted = ""; // stays when more of the answer comes

  /** The face after that soak; one picture is fetched at a time, the last one asked for is shown. */
  let waiting = "";
  const draw = at => {
    const face = document.getElementById("soak-face");
    if (!face) return;
    const src = face.getAttribute("src").replace(/soak=.*/, "soak=" + at);
    if (face.dataset.busy) { waiting = at; return; }
    if (face.getAttribute("src") === src) return;
    face.dataset.busy = "yes";
    waiting = "";
    face.onload = face.onerror = () => {
      delete face.dataset.busy;
      if (waiting) draw(waiting);
    };
    face.src = src;
  };

  /** Shows one soak beside the one advised. */
  const show = at => {
    const row = rows().find(r => r.dataset.soak === at);
    const slider = document.getElementById("soak-slider");
    if (!row || !slider) return;
    for (const r of rows()) r.hidden = r !== row && !r.dataset.advised;
    slider.value = rows().indexOf(row);
    slider.setAttribute("aria-valuetext", row.dataset.words);
    document.getElementById("soak-at").value = at;
    document.getElementById("soak-now").textContent = row.dataset.words;
    document.getElementById("soak-says").textContent = row.dataset.says;
    draw(at);
    const svg = document.querySelector("#fold-soak figure svg");
    if (!svg) return;
    let mark = svg.querySelector(".mark");
    if (!mark) {
      mark = document.createElementNS(svg.namespaceURI, "line");
      mark.setAttribute("class", "mark");
      mark.setAttribute("y1", form().dataset.top);
      mark.setAttribute("y2", form().dataset.bottom);
      svg.append(mark);
    }
    mark.setAttribute("x1", row.dataset.x);
    mark.setAttribute("x2", row.dataset.x);
  };

  const begin = () => {
    if (!form() || document.getElementById("soak-slider")) return;
    const slider = document.createElement("input");
    slider.type = "range";
    slider.id = "soak-slider";
    slider.max = rows().length - 1;
    const now = document.createElement("output");
    now.id = "soak-now";
    now.htmlFor = "soak-slider";
    form().querySelector("label").htmlFor = "soak-slider";
    form().append(now, slider);
    slider.addEventListener("input", () => show(wanted = rows()[slider.value].dataset.soak));
    const known = rows().some(r => r.dataset.soak === wanted);
    show(known ? wanted : document.getElementById("soak-at").value);
  };

  /** The soak that stands nearest to the pointer. */
  const point = event => {
    const svg = event.target.closest?.("#fold-soak figure svg");
    if (!svg || (event.type === "pointermove" && !event.buttons)) return;
    const box = svg.getBoundingClientRect();
    const x = (event.clientX - box.left) / box.width * form().dataset.width;
    const near = rows().reduce((a, b) => Math.abs(b.dataset.x - x) < Math.abs(a.dataset.x - x) ? b : a);
    show(wanted = near.dataset.soak);
  };
  document.addEventListener("pointerdown", point);
  document.addEventListener("pointermove", point);
  document.addEventListener("answer", begin);
  document.addEventListener("submit", event => {
    if (event.target.id === "whatif") event.preventDefault();
  });
  begin();
})();
