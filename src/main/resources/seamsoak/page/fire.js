"use strict";
// At the fire. The page works without this: with it the clock is seen and heard, what others enter
// comes by itself, and what is entered while the computer is away stays here and is sent once.
(() => {
  const $ = id => document.getElementById(id);
  const KEPT = "seamsoak-kept";
  let away = false;
  let sending = false;
  let leaving = false;
  let sound = null;
  let rung = false;
  let base = null; // what was left of the hold, and when that was, by two clocks

  const say = text => { if ($("status").textContent !== text) $("status").textContent = text; };
  const drawn = () => {
    const b = new Uint8Array(18);
    crypto.getRandomValues(b); // there is no randomUUID on plain http
    return [...b].map(x => x.toString(16).padStart(2, "0")).join("");
  };

  // what waits to be sent
  const kept = () => {
    try { return JSON.parse(localStorage.getItem(KEPT) || "[]"); } catch (e) { return []; }
  };
  const keep = list => { localStorage.setItem(KEPT, JSON.stringify(list)); tellKept(); };
  const tellKept = () => {
    const n = kept().length;
    $("kept").hidden = !n && !away;
    $("kept").textContent = (away ? "The computer does not answer. " : "")
      + (n ? (n === 1 ? "One entry is" : n + " entries are") + " kept here and sent once it does." : "What you enter is kept here until it does.");
  };

  const parsed = async response => new DOMParser().parseFromString(await response.text(), "text/html");

  /** Puts another page in place of ours; what is typed and unfolded stays. */
  const draw = page => {
    if (!page.getElementById("fire")) return false;
    const typed = new Map();
    for (const e of document.querySelectorAll("main input[type=text]")) if (e.value !== e.defaultValue) typed.set(e.id, e.value);
    for (const e of document.querySelectorAll("main input[type=radio]")) if (e.checked !== e.defaultChecked) typed.set(e.id, e.checked);
    const open = new Set([...document.querySelectorAll("details[open]")].map(d => d.id));
    const at = document.activeElement?.id;
    const task = $("task")?.dataset.task;
    const top = $("task")?.getBoundingClientRect().top;
    for (const id of ["bar", "fire"]) $(id).replaceWith(page.getElementById(id));
    for (const id of open) if ($(id)) $(id).open = true;
    // what was typed of another heat is not said of this one
    const same = task === $("task")?.dataset.task;
    for (const [id, value] of typed) {
      const e = $(id);
      if (!e || (!same && e.form?.classList.contains("finish"))) continue;
      if (typeof value === "boolean") e.checked = value; else e.value = value;
    }
    if (at && $(at)) $(at).focus({ preventScroll: true });
    // nothing moves under a finger
    if (same && scrollY + $("task").getBoundingClientRect().top - top >= 0) scrollBy(0, $("task").getBoundingClientRect().top - top);
    if (!same) { rung = false; scrollTo(0, 0); }
    rebase();
    tick();
    return true;
  };

  const load = async () => {
    const response = await fetch(location.href);
    if (response.status === 403) return out();
    draw(await parsed(response));
  };

  const out = () => {
    leaving = true;
    $("kept").hidden = false;
    $("kept").textContent = "This phone was let out: ask at the computer to join again."
      + (kept().length ? " " + kept().length + " entries stay here until then." : "");
  };

  /** Sends what waits, one after the other; what cannot be delivered stays. */
  const flush = async () => {
    if (sending || leaving) return;
    sending = true;
    try {
      for (let list = kept(); list.length; list = kept()) {
        const { url, body } = list[0];
        const response = await fetch(url, { method: "POST", body: new URLSearchParams(body) });
        if (response.status === 403) return out();
        if (response.status >= 500) throw new Error("later");
        keep(kept().filter(e => new URLSearchParams(e.body).get("id") !== new URLSearchParams(body).get("id")));
        back();
        const page = await parsed(response);
        if (!draw(page)) say(page.body.innerText);
        else if ($("notice")) say($("notice").textContent);
        else say("Entered.");
        if (response.status === 409) return; // somebody has to decide
      }
    } catch (e) {
      gone();
    } finally {
      sending = false;
      tellKept();
    }
  };

  const gone = () => {
    if (leaving) return;
    away = true;
    tellKept();
    next();
  };
  const back = () => { away = false; tellKept(); };

  /** While the computer is away the next heat that is planned alike may be entered too. */
  const next = () => {
    const form = document.querySelector("form.finish");
    if (!form || !form.dataset.kept) return;
    delete form.dataset.kept;
    const heat = form.elements.heat;
    if (+heat.value && +heat.value < +form.dataset.alike) {
      heat.value = +heat.value + 1;
      $("task-title").textContent = $("task-title").textContent.replace(/heat \d+/, "heat " + heat.value);
      form.querySelectorAll("input[type=text]").forEach(e => { e.value = ""; });
      say("Kept here. " + $("task-title").textContent);
    } else {
      form.querySelectorAll("button").forEach(b => { b.disabled = true; });
      say("Kept here. What comes next is planned once the computer answers.");
    }
  };

  document.addEventListener("submit", async event => {
    const form = event.target;
    wake();
    if (form.id === "tapping") {
      event.preventDefault();
      const sent = new FormData(form, event.submitter);
      const name = event.submitter.name;
      const place = new URLSearchParams([[name + ".x", sent.get(name + ".x")], [name + ".y", sent.get(name + ".y")]]);
      try {
        const page = await parsed(await fetch(form.action.replace("#etch", "?" + place)));
        document.querySelectorAll("[name=where]").forEach(e => { e.checked = e.defaultChecked; });
        draw(page);
        if ($("tapped")) say($("tapped").textContent);
      } catch (e) {
        say("The computer does not answer: take it from the list.");
      }
    } else if (form.classList.contains("enter")) {
      event.preventDefault();
      const body = new URLSearchParams(new FormData(form, event.submitter));
      if (!body.get("replace")) body.set("id", drawn());
      if (body.get("how") === "now" && base) body.set("held", (gonemillis() / 60000).toFixed(2));
      form.dataset.kept = "yes";
      keep([...kept(), { url: form.action, body: body.toString() }]);
      await flush();
    } else if (form.classList.contains("quick")) {
      event.preventDefault();
      try {
        const response = await fetch(form.action, { method: "POST", body: new URLSearchParams(new FormData(form, event.submitter)) });
        if (response.status === 403) return out();
        draw(await parsed(response));
        back();
      } catch (e) {
        gone();
      }
    }
  });

  // the clock
  const rebase = () => {
    const h = $("hold");
    base = h ? { left: +h.dataset.left, gone: +h.dataset.gone, at: Date.now(), count: performance.now() } : null;
  };
  // a phone that slept stops one clock, one that was set back lags with the other
  const since = () => Math.max(Date.now() - base.at, performance.now() - base.count);
  const gonemillis = () => base.gone + since();
  const shown = ms => {
    const s = Math.ceil(Math.abs(ms) / 1000);
    const m = Math.floor(s / 60);
    return (m >= 60 ? Math.floor(m / 60) + ":" + String(m % 60).padStart(2, "0") : m) + ":" + String(s % 60).padStart(2, "0");
  };
  const tick = () => {
    const h = $("hold");
    if (!h || !base) { document.title = document.title.replace(/^.*? \| /, ""); return; }
    const left = base.left - since();
    const over = left <= 0;
    const face = h.querySelector(".clock");
    face.textContent = over ? "+" + shown(left) : shown(left);
    h.classList.toggle("over", over);
    h.querySelector(".what").textContent = over ? h.dataset.over : h.dataset.running;
    document.title = face.textContent + " | " + document.title.replace(/^.*? \| /, "");
    if ($("gone")) $("gone").textContent = shown(gonemillis());
    if (over && !rung) { rung = true; say(h.dataset.over); ring(0); }
    if (!over) rung = false;
  };
  const wake = () => {
    try {
      sound = sound || new (window.AudioContext || window.webkitAudioContext)();
      if (sound.state === "suspended") sound.resume();
    } catch (e) { sound = null; }
  };
  const ring = times => {
    const h = $("hold");
    if (!h || !h.classList.contains("over") || times > 40) return;
    document.documentElement.dataset.rang = times + 1;
    if (navigator.vibrate) navigator.vibrate([400, 200, 400]);
    if (sound && sound.state === "running") {
      for (const [at, hertz] of [[0, 880], [0.25, 660], [0.5, 880]]) {
        const o = sound.createOscillator();
        const g = sound.createGain();
        o.frequency.value = hertz;
        o.type = "square";
        g.gain.setValueAtTime(0.25, sound.currentTime + at);
        g.gain.exponentialRampToValueAtTime(0.001, sound.currentTime + at + 0.22);
        o.connect(g).connect(sound.destination);
        o.start(sound.currentTime + at);
        o.stop(sound.currentTime + at + 0.24);
      }
    }
    setTimeout(() => ring(times + 1), 2000);
  };
  document.addEventListener("pointerdown", wake, { once: true });

  const pause = millis => new Promise(done => {
    setTimeout(done, millis);
    document.addEventListener("visibilitychange", done, { once: true });
  });

  /** Waits for what others enter and for what is planned by that. */
  const listen = async () => {
    while (!leaving) {
      const seen = document.visibilityState === "visible";
      try {
        const f = $("fire").dataset;
        const response = await fetch(`/d/${f.desk}/fire.news?mark=${f.mark}&hold=${seen ? 1 : 0}`);
        if (response.status === 403) return out();
        if (response.status === 410) { leaving = true; $("kept").hidden = false; $("kept").textContent = await response.text().then(t => new DOMParser().parseFromString(t, "text/html").querySelector("main p").textContent); return; }
        if (response.status >= 400) throw new Error("gone");
        const was = away;
        back();
        if (response.status === 200 || was) await load();
        else if (base && response.headers.get("X-Left")) {
          base = { left: +response.headers.get("X-Left"), gone: +response.headers.get("X-Gone"), at: Date.now(), count: performance.now() };
        }
        if (kept().length) await flush();
        await pause(seen ? 200 : 60000);
      } catch (e) {
        if (leaving) return;
        gone();
        await pause(3000);
      }
    }
  };

  addEventListener("pagehide", () => { leaving = true; });
  addEventListener("online", flush);
  document.documentElement.classList.add("live");
  rebase();
  tellKept();
  setInterval(tick, 250);
  tick();
  flush();
  listen();
})();
