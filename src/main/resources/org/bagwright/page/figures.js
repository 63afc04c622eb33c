// The table of figures of one slot: today and as set now.

class Figures {
  constructor(book, slot, index, was) {
    Object.assign(this, { book, slot, index, was });
    this.rows = new Map();
    this.body = el("tbody");
    this.node = el("table", { class: "figures" },
      el("thead", null, el("tr", null, el("td"), el("th", { scope: "col" }, "today"), el("th", { scope: "col" }, "yours"))),
      this.body);
  }

  show(option, now, today) {
    const { slot, index, book, was } = this;
    const add = (name, words, before, after, value) => this.row(name, words, before, after, value);
    const degrees = (name, words, column) => {
      const number = option => figure(slot, column, option);
      const text = value => value === null ? "" : fixed(value, 1) + "\u00b0";
      add(name, words, text(number(was)), text(number(option)), number(option));
    };
    degrees("loft", "Loft", "loftDeg");
    degrees("lie", "Lie", "lieDeg");
    const far = valueM => valueM === null ? "" : fixed(shown(book, valueM), 1) + " " + book.distance;
    const carry = option => figure(slot, "carryM", option);
    add("carry", "Carry", far(carry(was)), far(carry(option)), carry(option));
    const gap = score => {
      const found = score.gaps.find(each => each.from === index);
      return found ? found.gapM : null;
    };
    add("gap", "Gap after it", far(gap(today)), far(gap(now)), gap(now));
    degrees("landing", "Lands at", "landingDeg");
    const swing = option => {
      const points = figure(slot, "swingweight", option);
      return points === null ? "" : swingweightText(points);
    };
    add("swingweight", "Swingweight", swing(was), swing(option), null);
  }

  /** A row of the table; hidden where there is nothing in it. */
  row(name, words, before, after, value) {
    if (!this.rows.has(name)) {
      const cells = [el("td"), el("td", { class: "now", "data-figure": name })];
      const node = el("tr", null, el("th", { scope: "row" }, words), ...cells);
      this.rows.set(name, { node, cells });
      this.body.append(node);
    }
    const { node, cells } = this.rows.get(name);
    write(cells[0], before);
    write(cells[1], after);
    cells[1].dataset.value = value === null ? "" : value;
    cells[1].classList.toggle("moved", before !== after);
    node.hidden = before === "" && after === "";
  }
}
