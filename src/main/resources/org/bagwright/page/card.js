// The card of one slot: what is set, how it looks, what follows.

/** The option that changes one part of what is set; any with that part where the rest does not go with it. */
function changedPart(slot, option, name, value) {
  const club = clubOf(slot, option);
  const whole = optionWith(slot, club, { ...partsOf(slot, option), [name]: value });
  return whole >= 0 ? whole : optionWith(slot, club, { [name]: value });
}

class SlotCard {
  constructor(choices, bag, index) {
    this.choices = choices;
    this.book = choices.book;
    this.bag = bag;
    this.index = index;
    this.slot = bag.slots[index];
    this.name = el("h3", { id: "club-" + index });
    this.badge = el("span", { class: "badge" });
    this.settings = el("div", { class: "settings" });
    this.look = lookDrawing(bag.left, "iron");
    this.lookText = el("figcaption");
    this.figures = new Figures(this.book, this.slot, index, bag.today[index]);
    this.sure = el("p", { class: "sure" });
    this.faults = el("ul", { class: "faults" });
    this.node = el("article", { class: "club", "aria-labelledby": "club-" + index },
      el("header", null, this.name, this.badge),
      this.candidates(),
      el("div", { class: "hands" }, this.settings, el("figure", { class: "looks" }, this.look.drawing, this.lookText)),
      this.faults, this.figures.node, this.sure);
    this.club = undefined;
    this.shown = "";
  }

  get option() {
    return this.choices.yours[this.index];
  }

  choose(option, name) {
    if (option >= 0) {
      this.choices.choose(this.index, option, name);
    }
  }

  /** Which club fills the slot, where there is a choice. */
  candidates() {
    const { slot } = this;
    if (slot.clubs.length === 1 && slot.empty < 0) {
      return null;
    }
    const items = slot.clubs.map((club, place) => [place, club.name]);
    if (slot.empty >= 0) {
      items.push([-1, "left out"]);
    }
    this.list = listControl("Club", items, place => this.choose(this.usual(place)));
    return this.list.node;
  }

  /** How a club is set that is put in: as planned, or as it is today. */
  usual(place) {
    const { slot, bag } = this;
    const planned = bag.plan[this.index];
    if (place < 0) {
      return slot.empty;
    }
    if (cost(slot, "club", planned) === place) {
      return planned;
    }
    const today = slot.clubs[place].today;
    return today === undefined ? optionWith(slot, slot.clubs[place], {}) : today;
  }

  /** The controls of the club that is in the slot now. */
  setUp(club) {
    this.club = club;
    this.sleeve = null;
    this.controls = [];
    if (!club) {
      this.settings.replaceChildren();
      return;
    }
    if (club.sleeve !== undefined && club.settings.length > 1) {
      this.sleeve = sleeveControl(this.book, club, this.bag.left,
        (place, name) => this.choose(changedPart(this.slot, this.option, "setting", place), name));
    }
    if (club.weightings.length > 1) {
      this.add("weighting", listControl("Weights", club.weightings.map((name, place) => [place, name]),
        value => this.choose(changedPart(this.slot, this.option, "weighting", value))));
    }
    this.addBend("loftBend", "Loft bend", ["stronger", "weaker"]);
    this.addBend("lieBend", "Lie bend", ["flatter", "more upright"]);
    const nodes = [...(this.sleeve ? [this.sleeve] : []), ...this.controls].map(control => control.node);
    this.settings.replaceChildren(...(nodes.length > 0 ? nodes : [el("p", { class: "quiet" }, "Nothing to set.")]));
  }

  add(name, control) {
    this.controls.push({ ...control, name });
  }

  addBend(name, text, words) {
    const values = valuesOf(this.slot, this.club, name);
    if (values.length > 1) {
      this.add(name, stepControl(text, values, words,
        value => this.choose(changedPart(this.slot, this.option, name, value))));
    }
  }

  /** Shows a score: the whole bag's, of which this card shows its slot. */
  show(now, today, broken) {
    const { slot, option, index } = this;
    const club = clubOf(slot, option);
    const rules = broken.filter(rule => rule.index === index).map(rule => rule.words);
    const gap = now.gaps.find(each => each.from === index);
    const key = [option, gap ? gap.gapM : "", ...rules].join("/");
    if (key === this.shown) {
      return;
    }
    this.shown = key;
    if (club !== this.club) {
      this.setUp(club);
    }
    write(this.name, club ? club.name : slot.clubs[0].name + ": left out");
    const changes = cost(slot, "changes", option);
    const work = workTexts(slot, this.bag.today[index], option);
    write(this.badge, work.length === 0 ? "as today" : changes === 1 ? "1 change" : changes + " changes");
    this.node.classList.toggle("changed", work.length > 0);
    if (this.list) {
      this.list.show(cost(slot, "club", option));
    }
    for (const control of this.controls) {
      control.show(cost(slot, control.name, option));
    }
    if (this.sleeve) {
      this.sleeve.show(this.club.settings.map((mark, place) => this.told(place)), cost(slot, "setting", option));
    }
    this.showLook(club);
    this.figures.show(option, now, today);
    this.faults.replaceChildren(...rules.map(words => el("li", null, words)));
    write(this.sure, sureText(this.bag, index, option));
  }

  /** What the dial tells of one of its settings. */
  told(place) {
    const { slot, bag, index } = this;
    const option = changedPart(slot, this.option, "setting", place);
    const isSet = other => clubOf(slot, other) === this.club && cost(slot, "setting", other) === place;
    const closed = figure(slot, "closed", option);
    const told = {
      today: isSet(bag.today[index]),
      plan: isSet(bag.plan[index]),
      closed: closed !== null,
      small: fixed(figure(slot, "loftDeg", option), 1) + "\u00b0 " + fixed(figure(slot, "lieDeg", option), 1) + "\u00b0",
    };
    const words = [this.club.settings[place], "loft " + fixed(figure(slot, "loftDeg", option), 1),
      "lie " + fixed(figure(slot, "lieDeg", option), 1), sitsText(figure(slot, "sitsDeg", option))];
    told.words = words.concat(told.today ? "today" : [], told.plan ? "plan" : [],
      closed === null ? [] : "may not be planned: " + closed).join(", ");
    return told;
  }

  showLook(club) {
    const sits = figure(this.slot, "sitsDeg", this.option);
    this.look.drawing.classList.toggle("none", !club);
    if (club) {
      turnLook(this.look, sits, club.kind);
    }
    const text = club ? "sits " + sitsText(sits) : "";
    write(this.lookText, text);
  }
}

/** How sure a choice is, in words; nothing where that is not known. */
function sureText(bag, index, option) {
  const sure = (bag.sure || []).find(each => each.slot === index);
  if (!sure || bag.slots[index].count === 1) {
    return "";
  }
  const share = sure.best.find(each => each[0] === option);
  const cases = option === bag.plan[index] ? sure.planned : share ? share[1] : null;
  return cases === null ? "Seldom the best choice." : "Best in " + cases + " of 100 likely cases.";
}
