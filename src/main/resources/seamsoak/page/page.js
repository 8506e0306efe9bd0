"use strict";
// The page works without this: every action is a button of a form. With it, a field is taken as
// soon as it is left, the bench is drawn anew in place, and the answer comes by itself.
(() => {
  const $ = id => document.getElementById(id);
  document.documentElement.classList.add("live");
  let sending = Promise.resolve(); // one change after the other, each on what the last one gave
  let asked = 0;
  let leaving = false;

  const say = text => { $("status").textContent = text; };

  /** What the smith is at, so that it is the same after the bench is drawn anew. */
  const held = () => {
    const at = document.activeElement;
    const typed = new Map();
    for (const e of document.querySelectorAll("#bench input[type=text], #bench select")) {
      const was = e.tagName === "SELECT" ? [...e.options].find(o => o.defaultSelected)?.value ?? e.options[0]?.value : e.defaultValue;
      if (e.id && e.value !== was) typed.set(e.id, e.value);
    }
    return {
      id: at && at.id,
      act: at && at.name === "act" ? at.value : "",
      from: at && at.type === "text" ? at.selectionStart : null,
      to: at && at.type === "text" ? at.selectionEnd : null,
      typed,
      open: new Map([...document.querySelectorAll("details[id]")].map(d => [d.id, d.open])),
      scroll: $("result") ? $("result").scrollTop : 0,
    };
  };

  const restore = (was, sent) => {
    for (const [id, open] of was.open) if ($(id) && (open || !$(id).querySelector(".fault"))) $(id).open = open;
    // what was typed meanwhile stays; what was sent is as the program has it
    for (const [id, value] of was.typed) {
      const e = $(id);
      if (e && sent.get(e.name) !== value) e.value = value;
    }
    const at = (was.id && $(was.id)) || (was.act && document.querySelector(`button[value="${CSS.escape(was.act)}"]`));
    if (at) {
      at.focus({ preventScroll: true });
      if (was.from !== null && at.setSelectionRange) at.setSelectionRange(was.from, was.to);
    }
    if ($("result")) $("result").scrollTop = was.scroll;
  };

  /** Puts the result of another page in place of ours; what is known stays until there is more. */
  const putResult = fresh => {
    const old = $("result");
    if (fresh.dataset.stage === "NONE" && old.querySelector(".verdict")) {
      old.className = "old";
      old.dataset.rev = fresh.dataset.rev;
      old.dataset.stage = "NONE";
      old.dataset.done = 0;
      delete old.dataset.whole;
      let state = old.querySelector(".state");
      if (!state) {
        state = document.createElement("p");
        state.className = "state";
        old.querySelector(".quiet").after(state);
      }
      state.textContent = "Working out the change. Until then, as it was before:";
      return;
    }
    const opened = new Map([...old.querySelectorAll("details")].map(d => [d.id, d.open]));
    const scroll = old.scrollTop;
    old.replaceWith(fresh);
    for (const d of fresh.querySelectorAll("details")) d.open = opened.get(d.id) ?? d.open;
    fresh.scrollTop = scroll;
    document.dispatchEvent(new Event("answer"));
  };

  const parsed = async response => new DOMParser().parseFromString(await response.text(), "text/html");

  const lost = () => {
    if (leaving) return;
    say("");
    let notice = $("notice");
    if (!notice) {
      notice = document.createElement("p");
      notice.id = "notice";
      notice.className = "fault";
      notice.setAttribute("role", "alert");
      $("status").after(notice);
    }
    notice.textContent = "The program does not answer any more. What you typed stays here; start it again to go on.";
  };

  /** Asks for the answer as long as there is more to come. */
  const follow = async () => {
    const mine = ++asked;
    while (mine === asked && $("result") && $("result").dataset.rev && !$("result").dataset.whole) {
      const r = $("result").dataset;
      const stage = r.stage;
      let page;
      try {
        const response = await fetch(`/d/${r.desk}/answer?rev=${r.rev}&stage=${stage}&done=${r.done}`);
        if (!response.ok) return;
        page = await parsed(response);
      } catch (e) {
        if (mine === asked) lost();
        return;
      }
      const fresh = page.getElementById("result");
      if (mine !== asked || !fresh) return;
      if (fresh.dataset.stage === stage && stage === "MIDDLE") {
        // only the count has changed: nothing else moves under the reader
        r.done = fresh.dataset.done;
        const state = $("result").querySelector(".state");
        if (state) state.replaceWith(fresh.querySelector(".state"));
      } else {
        putResult(fresh);
        const answer = $("answer");
        if (answer && fresh.dataset.stage === "BAND") say("The answer: " + answer.textContent);
      }
      await new Promise(done => setTimeout(done, 150));
    }
  };

  /** Until a time is over, or the window is looked at again. */
  const pause = millis => new Promise(done => {
    setTimeout(done, millis);
    document.addEventListener("visibilitychange", done, { once: true });
  });

  /** Waits for what other windows change, and by that lets the program know that somebody is here. */
  const listen = async () => {
    while (!leaving) {
      const rev = $("bench") ? $("bench").elements.rev.value : "";
      const desk = $("result") ? `/d/${$("result").dataset.desk}` : "";
      // a browser holds few lines to one place: only the window that is looked at keeps one
      const seen = document.visibilityState === "visible";
      try {
        const response = await fetch(`${desk}/news?rev=${rev}&hold=${seen ? 1 : 0}`);
        if (response.status >= 400) return lost();
        if (response.status === 200 && rev) {
          sending = sending.then(async () => {
            if ($("bench").elements.rev.value === rev) draw(await parsed(await fetch(desk)), new URLSearchParams());
          });
          await sending;
        }
      } catch (e) {
        return lost();
      }
      await pause(seen ? 200 : 120000);
    }
  };

  /** Puts another page's bench in place of ours. */
  const draw = (page, sent) => {
    const was = held();
    const result = page.getElementById("result");
    const ours = $("result");
    document.querySelectorAll("#notice, form.conflict").forEach(e => e.remove());
    for (const extra of page.querySelectorAll("#notice, form.conflict")) $("status").after(extra);
    document.querySelector("header").replaceWith(page.querySelector("header"));
    document.querySelector("footer").replaceWith(page.querySelector("footer"));
    $("bench").replaceWith(page.getElementById("bench"));
    restore(was, sent);
    if (result.dataset.rev !== ours.dataset.rev || !result.dataset.rev || result.dataset.kept !== ours.dataset.kept) putResult(result);
    const faults = page.querySelector("#faults h2");
    say(page.querySelector("#notice") ? "" : faults ? faults.textContent : "Taken.");
    follow();
  };

  const send = (form, action, fields) => {
    const work = async () => {
      const body = new URLSearchParams(fields);
      if (form.elements.rev) body.set("rev", $("bench").elements.rev.value);
      const response = await fetch(action, { method: "POST", body });
      const page = await parsed(response);
      if (!page.getElementById("bench")) { // another page altogether
        if (response.redirected) location.assign(response.url); else form.submit();
        return;
      }
      draw(page, body);
    };
    sending = sending.then(work).catch(lost);
    return sending;
  };

  document.addEventListener("change", event => {
    const e = event.target;
    if (!e.form || e.form.id !== "bench" || !e.name || e.name.startsWith("new.")) return;
    send(e.form, e.form.action, [[e.name, e.value]]);
  });

  document.addEventListener("submit", event => {
    const form = event.target;
    if (form.id !== "bench" && !form.matches(".conflict, .sent")) return;
    event.preventDefault();
    // only what was touched is sent: the rest may have been changed in another window meanwhile
    const touched = form.id === "bench" ? held().typed : new Map();
    const fields = [...new FormData(form, event.submitter)].filter(([name]) =>
      form.id !== "bench" || name === "act" || name.startsWith("new.") || touched.has($(form.elements[name].id)?.id));
    send(form, form.action, fields);
  });

  document.addEventListener("keydown", event => {
    if (event.key === "Enter" && event.target.form?.id === "bench" && event.target.type === "text") {
      event.preventDefault(); // Enter takes the field and presses no button
      event.target.dispatchEvent(new Event("change", { bubbles: true }));
    }
    document.documentElement.classList.toggle("nohelp", event.key === "Escape");
  });

  document.addEventListener("click", event => {
    const link = event.target.closest?.("a[href^='#']");
    const at = link && $(link.getAttribute("href").slice(1));
    if (!at) return;
    for (let d = at.closest("details"); d; d = d.parentElement.closest("details")) d.open = true;
    event.preventDefault();
    at.scrollIntoView({ block: "center" });
    if (at.matches("input, select")) at.focus();
  });

  // with the script a file is chosen; without it its text is pasted
  if ($("bring-text")) {
    const file = document.createElement("input");
    file.type = "file";
    file.accept = ".json";
    file.setAttribute("aria-label", "File of the billet");
    file.addEventListener("change", async () => {
      if (!file.files[0]) return;
      $("bring-text").value = await file.files[0].text();
      if (!$("bring-name").value) $("bring-name").value = file.files[0].name.replace(/\.json$/, "");
    });
    $("bring-text").before(file);
  }

  addEventListener("pagehide", () => { leaving = true; });
  addEventListener("beforeunload", event => {
    if ($("bench") && held().typed.size) event.preventDefault();
  });

  follow();
  listen();
})();
