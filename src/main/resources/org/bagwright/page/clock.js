// The sleeve of a club: its marks round the clock, seen from the grip end; a list where their places are not known.

const MOST_ON_DIAL = 12;
const LONGEST_MARK = 4;

/** Where a mark is, in turns from the top, clockwise as seen from the grip end: a right-hander has the target on his left. */
function turnsOf(hour, left) {
  const turns = hour / 12;
  return left ? turns : (1 - turns) % 1;
}

/** The settings of a club in the order in which they are shown, with their places on the dial, if they have some. */
function settingsOf(book, club, left) {
  const sleeve = book.sleeves[club.sleeve];
  const settings = club.settings.map((mark, place) => {
    const at = sleeve.marks.indexOf(mark);
    return { mark, place, turns: sleeve.round ? turnsOf(sleeve.hours[at], left) : 0 };
  });
  const round = sleeve.round && settings.length > 1 && settings.length <= MOST_ON_DIAL
    && settings.every(setting => setting.mark.length <= LONGEST_MARK);
  return { round, settings: round ? settings.sort((a, b) => a.turns - b.turns) : settings };
}

/** The mark that is nearest to a point of the dial. */
function nearest(settings, x, y) {
  const turns = (Math.atan2(x, -y) / (2 * Math.PI) + 1) % 1;
  const off = setting => Math.abs(((setting.turns - turns + 1.5) % 1) - 0.5);
  return settings.reduce((best, setting) => off(setting) < off(best) ? setting : best);
}

/** Buttons for the settings of a sleeve; choose takes the place of a setting and the name of a drag. */
function sleeveControl(book, club, left, choose) {
  const { round, settings } = settingsOf(book, club, left);
  const buttons = settings.map(({ mark, place }) => el("button",
    { type: "button", role: "radio", class: "mark", click: () => choose(place, "") },
    el("span", { class: "name" }, mark), round ? null : el("small")));
  const group = el("div", {
    role: "radiogroup",
    class: !round ? "marks" : settings.length > 9 ? "dial many" : "dial",
    "aria-label": "Sleeve setting of " + club.name + (round ? ", marks as seen from the grip end" : ""),
    keydown: event => moveAmong(buttons, event, next => choose(settings[next].place, "")),
  });
  if (round) {
    group.append(dialFace(left));
    settings.forEach(({ turns }, at) => {
      buttons[at].style.left = fixed(50 + 39 * Math.sin(2 * Math.PI * turns), 2) + "%";
      buttons[at].style.top = fixed(50 - 39 * Math.cos(2 * Math.PI * turns), 2) + "%";
    });
    dragOn(group, settings, choose);
  }
  group.append(...buttons);
  const show = (told, now) => {
    settings.forEach(({ place }, at) => showMark(buttons[at], told[place], now === place));
    if (round) {
      const turns = settings.find(setting => setting.place === now).turns;
      group.querySelector(".hand").setAttribute("transform", "rotate(" + fixed(360 * turns, 2) + " 50 50)");
    }
  };
  return { node: group, show };
}

/** What one setting shows: words for it, what it is in today's bag and in the plan, and a small text. */
function showMark(node, told, chosen) {
  node.setAttribute("aria-checked", chosen);
  node.tabIndex = chosen ? 0 : -1;
  node.setAttribute("aria-label", told.words);
  for (const name of ["today", "plan", "closed"]) {
    node.classList.toggle(name, told[name]);
  }
  if (node.lastChild.tagName === "SMALL") {
    write(node.lastChild, told.small);
  }
}

/** The face: where the target and the toe are, and the hand that points at the mark. */
function dialFace(left) {
  return svg("svg", { viewBox: "0 0 100 100", "aria-hidden": "true" },
    svg("circle", { cx: 50, cy: 50, r: 39, class: "ring" }),
    svg("g", { class: "hand" },
      svg("circle", { cx: 50, cy: 50, r: 15, class: "hub" }),
      svg("path", { d: "M46 37 L50 24 L54 37 Z", class: "pointer" })),
    label(50, 51, "hub-text", "sleeve"),
    svg("path", { d: left ? "M68 50 h9 m-4 -3 l4 3 l-4 3" : "M32 50 h-9 m4 -3 l-4 3 l4 3", class: "aim" }),
    label(left ? 69 : 31, 61, "side", "target"));
}

/** A drag from the hub or the chosen mark round the dial. */
function dragOn(dial, settings, choose) {
  let from = null;
  dial.addEventListener("pointerdown", event => {
    const hub = event.target.closest(".hand");
    const knob = event.target.closest("[aria-checked=true]");
    from = hub || knob ? { x: event.clientX, y: event.clientY, name: "drag" + event.timeStamp } : null;
  });
  dial.addEventListener("pointermove", event => {
    if (!from || (Math.hypot(event.clientX - from.x, event.clientY - from.y) < 8 && !from.moving)) {
      return;
    }
    from.moving = true;
    dial.setPointerCapture(event.pointerId);
    const box = dial.getBoundingClientRect();
    const setting = nearest(settings, event.clientX - box.left - box.width / 2, event.clientY - box.top - box.height / 2);
    choose(setting.place, from.name);
  });
  for (const end of ["pointerup", "pointercancel"]) {
    dial.addEventListener(end, () => {
      from = null;
    });
  }
}
