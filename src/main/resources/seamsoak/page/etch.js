"use strict";
// A photograph of a test etch beside the computed face, to one scale. The photograph is read here
// and shown here; no request of this page carries any of it. The list of seams works without this.
(() => {
  const $ = id => document.getElementById(id);
  const say = text => { $("status").textContent = ""; $("status").textContent = text; };
  const form = $("look");

  /** Dots the seams that are chosen. */
  const show = where => {
    for (const p of document.querySelectorAll("#sheet path")) p.classList.toggle("on", p.dataset.where === where);
  };

  // what was seen is entered without leaving the page where a photograph lies on it, which would be
  // lost; without one the page goes on to the fire, where it is told what now
  const entered = [];
  document.addEventListener("submit", async event => {
    const sent = event.target;
    if (!sent.classList.contains("enter")) return;
    event.preventDefault();
    const body = new URLSearchParams(new FormData(sent, event.submitter));
    if (!body.get("replace")) body.set("id", [...crypto.getRandomValues(new Uint8Array(18))].map(x => x.toString(16).padStart(2, "0")).join(""));
    const what = body.get("where") + ": " + body.get("line") + (body.get("width") ? ", " + body.get("width") : "");
    let told;
    try {
      const response = await fetch(sent.action, { method: "POST", body });
      const page = new DOMParser().parseFromString(await response.text(), "text/html");
      told = response.ok ? "" : page.querySelector("#notice, main p, body")?.textContent.trim();
    } catch (e) {
      told = "The computer does not answer. What you chose stays here: press it again once it does.";
    }
    document.querySelectorAll("#refused").forEach(e => e.remove());
    if (told) {
      const p = document.createElement("p");
      p.id = "refused";
      p.className = "fault";
      p.setAttribute("role", "alert");
      p.textContent = told;
      form.prepend(p);
      return;
    }
    if (!$("photo-file")?.files.length) {
      location.assign($("now").href);
      return;
    }
    entered.push("Entered: " + what);
    $("entered").replaceChildren(...entered.map(text => Object.assign(document.createElement("li"), { textContent: text })));
    $("entered").hidden = false;
    say(entered[entered.length - 1]);
    form.reset();
    show("");
  });

  const stage = $("stage");
  if (!stage) return;
  const across = +stage.dataset.across; // mm
  const up = +stage.dataset.up;
  const gap = up * 0.04;
  const photo = Object.assign(document.createElement("img"), { id: "photo", alt: "Your photograph of the etch", hidden: true });
  $("computed").after(photo);
  const at = { right: 0, down: 0 }; // of the photograph's middle from the face's, mm
  let wide = across; // what the photograph shows, mm
  let known = false;
  let wanted = null; // what the next points on the photograph are for
  let points = [];
  const svg = name => document.createElementNS("http://www.w3.org/2000/svg", name);

  const isOver = () => $("show-over").checked;
  const turn = () => +$("turn").value * Math.PI / 180;
  const high = () => wide * photo.naturalHeight / photo.naturalWidth;
  const reach = () => Math.abs(wide * Math.sin(turn())) + Math.abs(high() * Math.cos(turn()));
  /** How far below the face a copy of it would lie on the photograph, mm. */
  const below = () => isOver() ? 0 : up / 2 + gap + reach() / 2 - at.down;
  const perMm = () => stage.clientWidth / across * $("larger").value;

  const draw = () => {
    const k = perMm();
    const sheet = $("sheet");
    const bottom = photo.hidden || isOver() ? up : up + 2 * gap + reach();
    sheet.style.width = across * k + "px";
    sheet.style.height = bottom * k + "px";
    for (const id of ["dots", "copy"]) $(id).style.height = up * k + "px";
    $("marks").setAttribute("viewBox", `0 0 ${across} ${bottom}`);
    $("marks").style.height = bottom * k + "px";
    $("copy").style.top = (up / 2 + gap + reach() / 2 - at.down - up / 2) * k + "px";
    $("copy").style.display = photo.hidden || isOver() ? "none" : "";
    photo.classList.toggle("over", isOver());
    photo.style.width = wide * k + "px";
    photo.style.left = (across / 2 + at.right - wide / 2) * k + "px";
    photo.style.top = (up / 2 + at.down + below() - high() / 2) * k + "px";
    photo.style.transform = `rotate(${$("turn").value}deg)`;
    photo.style.opacity = isOver() ? $("fade").value / 100 : 1;
    sheet.classList.toggle("marking", wanted !== null);
    $("marks").replaceChildren(...points.map(p => {
      const c = svg("circle");
      const [x, y] = placed(p);
      for (const [name, value] of [["cx", x], ["cy", y], ["r", 8 / k], ["vector-effect", "non-scaling-stroke"]]) c.setAttribute(name, value);
      return c;
    }));
  };

  /** Where a place in the photograph, in widths of it from its middle, lies on the sheet, mm. */
  const placed = ([x, y]) => [
    across / 2 + at.right + wide * (x * Math.cos(turn()) - y * Math.sin(turn())),
    up / 2 + at.down + below() + wide * (x * Math.sin(turn()) + y * Math.cos(turn())),
  ];
  const inPhoto = ([x, y]) => {
    const dx = (x - across / 2 - at.right) / wide;
    const dy = (y - up / 2 - at.down - below()) / wide;
    return [dx * Math.cos(turn()) + dy * Math.sin(turn()), dy * Math.cos(turn()) - dx * Math.sin(turn())];
  };

  /** A length as a smith types it, mm; not a number where it is none. */
  const length = text => {
    const m = /^\s*(?:(\d+(?:[.,]\d+)?)|(?:(\d+)[ -])?(\d+)\/(\d+))\s*(mm|cm|in|inch|")?\s*$/.exec(text);
    if (!m) return NaN;
    const number = m[1] ? +m[1].replace(",", ".") : +(m[2] || 0) + m[3] / m[4];
    const mm = number * { mm: 1, cm: 10 }[m[5] || $("far").dataset.unit] || number * 25.4;
    return mm >= 1 && mm <= 2000 ? mm : NaN;
  };

  const scaled = () => {
    const typed = $("far").value;
    const mm = typed.trim() ? length(typed) : NaN;
    const bad = typed.trim() !== "" && !mm;
    $("far-fault").hidden = !bad;
    $("far-fault").textContent = bad ? "Type a length such as 60 mm or 2-3/8 in." : "";
    $("far").setAttribute("aria-invalid", bad);
    if (!mm) return;
    const part = points.length === 2 ? Math.hypot(points[0][0] - points[1][0], points[0][1] - points[1][1]) : 1;
    wide = mm / part;
    if (!known) { known = true; $("measure").hidden = false; }
    ask("");
    say("Shown to the same scale: the photograph is " + wide.toFixed(0) + " mm wide.");
    draw();
  };

  const ask = text => { $("asked").textContent = text; };
  const unscaled = "Shown as if it were as wide as what is computed. Say how wide it is, or mark two points whose distance you know.";

  const read = () => {
    const file = $("photo-file").files[0];
    if (!file) return;
    const reader = new FileReader();
    reader.onload = () => {
      photo.onload = () => {
        photo.hidden = false;
        $("placing").hidden = $("laying").hidden = false;
        if (!known) { points = []; ask(unscaled); }
        draw();
        if (!known) say("The photograph is shown.");
      };
      photo.onerror = () => { photo.hidden = true; $("placing").hidden = $("laying").hidden = true; ask("This browser cannot show " + file.name + ". Choose a JPEG, PNG or WebP picture."); draw(); };
      photo.src = reader.result;
    };
    reader.onerror = () => ask(file.name + " cannot be read.");
    known = false;
    wide = across;
    points = [];
    $("far").value = "";
    $("measure").hidden = true;
    reader.readAsDataURL(file);
  };

  const mark = what => { wanted = what; points = []; ask("Point at the first of the two on the photograph."); draw(); };

  const marked = place => {
    points.push(inPhoto(place));
    if (points.length < 2) { ask("And at the second."); draw(); return; }
    const part = Math.hypot(points[0][0] - points[1][0], points[0][1] - points[1][1]);
    const what = wanted;
    wanted = null;
    if (part < 0.001) { points = []; ask("The two are one place. Mark them again."); draw(); return; }
    if (what === "scale") {
      $("far-label").textContent = "How far apart are the two points";
      ask("Say how far apart the two points are.");
      $("far").value = "";
      $("far").focus();
    } else {
      const mm = part * wide;
      $("width").value = $("far").dataset.unit === "mm" ? mm.toFixed(2) + " mm" : (mm / 25.4).toFixed(3) + " in";
      points = [];
      ask("");
      say("Width: " + $("width").value);
      $("width").focus();
    }
    draw();
  };

  /** Chooses the seams that lie nearest to a place of the face, mm. */
  const choose = ([x, y]) => {
    let best = Math.max(up / 12, 12 / perMm());
    let where = "";
    for (const p of document.querySelectorAll("#dots path")) {
      for (const [, a, b] of p.getAttribute("d").matchAll(/M([\d.]+) ([\d.]+)/g)) {
        const d = Math.hypot(a - x, b - y);
        if (d < best) { best = d; where = p.dataset.where; }
      }
    }
    const radio = [...form.querySelectorAll("input[name=where]")].find(r => r.value === where);
    if (!radio) { say("No seam is near there."); return; }
    radio.checked = true;
    show(where);
    say("Chosen: " + radio.parentElement.textContent.trim());
  };

  const place = event => {
    const box = $("sheet").getBoundingClientRect();
    return [(event.clientX - box.left) / perMm(), (event.clientY - box.top) / perMm()];
  };

  let moved = false;
  photo.addEventListener("pointerdown", event => {
    if (!isOver() || wanted) return;
    event.preventDefault();
    const from = { x: event.clientX, y: event.clientY, right: at.right, down: at.down };
    const move = e => {
      if (Math.hypot(e.clientX - from.x, e.clientY - from.y) < 4 && !moved) return;
      moved = true;
      $("right").value = at.right = from.right + (e.clientX - from.x) / perMm();
      $("down").value = at.down = from.down + (e.clientY - from.y) / perMm();
      draw();
    };
    photo.setPointerCapture(event.pointerId);
    photo.addEventListener("pointermove", move);
    for (const end of ["pointerup", "pointercancel"]) photo.addEventListener(end, () => photo.removeEventListener("pointermove", move), { once: true });
  });
  $("sheet").addEventListener("click", event => {
    if (moved) { moved = false; return; }
    const [x, y] = place(event);
    if (wanted) { if (event.target === photo) marked([x, y]); return; }
    choose(event.target === photo ? [x, y - below()] : [x, y]);
  });

  const copy = $("dots").cloneNode(true);
  copy.id = "copy";
  $("dots").after(copy);
  const measure = Object.assign(document.createElement("button"), { type: "button", id: "measure", hidden: true, textContent: "Measure it on the photograph" });
  $("width").parentElement.after(measure);
  measure.addEventListener("click", () => { mark("width"); stage.scrollIntoView({ block: "nearest" }); });
  $("two").addEventListener("click", () => mark("scale"));
  $("far").addEventListener("change", scaled);
  $("photo-file").addEventListener("change", read);
  for (const id of ["larger", "fade", "turn", "show-below", "show-over"]) $(id).addEventListener("input", draw);
  for (const id of ["right", "down"]) $(id).addEventListener("input", () => { at[id] = +$(id).value; draw(); });
  form.addEventListener("change", event => {
    if (event.target.name === "where") show(event.target.value);
    if (event.target.id !== "etched") return;
    const computed = $("computed");
    computed.src = computed.getAttribute("src").replace(/&etched=.*|$/, "&etched=" + event.target.value);
  });
  addEventListener("resize", draw);
  $("tools").hidden = false;
  $("point").hidden = false;
  document.documentElement.classList.add("live");
  show(form.querySelector("input[name=where]:checked")?.value || "");
  draw();
})();
