// What else is set on a club: which club, its weighting, its bends.

/** A choice from a list. Items are [value, text]. */
function listControl(name, items, choose) {
  const list = el("select", { change: () => choose(Number(list.value)) },
    ...items.map(([value, text]) => el("option", { value }, text)));
  return {
    node: el("label", { class: "field" }, el("span", null, name), list),
    show: value => {
      list.value = String(value);
    },
  };
}

/** A value among others, one step at a time. Values rise. */
function stepControl(name, values, words, choose) {
  let at = 0;
  const value = el("output", { class: "value" });
  const less = button("step", "\u2212", () => choose(values[at - 1]), { "aria-label": name + ": " + words[0] });
  const more = button("step", "+", () => choose(values[at + 1]), { "aria-label": name + ": " + words[1] });
  const node = el("div", { class: "field", role: "group", "aria-label": name }, el("span", null, name),
    el("div", { class: "stepper" }, less, value, more));
  return {
    node,
    show: now => {
      at = values.indexOf(now);
      write(value, bendText(now) + "\u00b0");
      less.disabled = at <= 0;
      more.disabled = at >= values.length - 1;
    },
  };
}

/** The option of a club with this setting, weighting and bends; -1 if there is none. */
function optionWith(slot, club, wanted) {
  const place = slot.clubs.indexOf(club);
  const parts = Object.entries(wanted);
  for (let option = 0; option < slot.count; option++) {
    const fits = cost(slot, "club", option) === place
      && parts.every(([name, value]) => cost(slot, name, option) === value);
    if (fits) {
      return option;
    }
  }
  return -1;
}

/** What is set for an option, by the names of the columns. */
function partsOf(slot, option) {
  const parts = {};
  for (const name of ["setting", "weighting", "loftBend", "lieBend"]) {
    parts[name] = cost(slot, name, option);
  }
  return parts;
}

/** The different values of a column over the options of a club, rising. */
function valuesOf(slot, club, name) {
  const place = slot.clubs.indexOf(club);
  const values = new Set();
  for (let option = 0; option < slot.count; option++) {
    if (cost(slot, "club", option) === place) {
      values.add(cost(slot, name, option));
    }
  }
  return [...values].sort((a, b) => a - b);
}
