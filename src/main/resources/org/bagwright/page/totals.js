// Sums: points by measure, and what is broken.

class Points {
  constructor(choices, bag, scores) {
    this.book = choices.book;
    this.scores = scores;
    this.body = el("tbody");
    this.node = section("points", "Points by measure",
      el("p", { class: "quiet" }, "1 point is one tolerance off, at importance 1. Less is better."),
      el("div", { class: "scroll" }, el("table", { class: "numbers" },
        el("thead", null, el("tr", null, ...["Measure", "Today", "Plan", "Yours"].map(name => el("th", { scope: "col" }, name)))),
        this.body)));
  }

  show(now) {
    const scores = [this.scores.today, this.scores.plan, now];
    const most = Math.max(...scores.flatMap(score => score.byMeasure), 1e-9);
    const rows = this.book.measures.map((measure, place) => {
      const points = scores.map(score => score.byMeasure[place]);
      return points.every(each => each < 0.005) ? null
        : this.row(measure.name, points, most);
    });
    const total = this.row("all", scores.map(score => score.points), Infinity);
    total.className = "total";
    const doubt = this.row("of it doubt", scores.map(score => score.doubt), Infinity);
    this.body.replaceChildren(...rows.filter(row => row !== null), total,
      ...(scores.some(score => score.doubt > 0) ? [doubt] : []));
  }

  row(name, points, most) {
    const cells = points.map((each, place) => {
      const cell = el("td", place === 2 ? { class: "now" } : null, fixed(each, 2));
      if (most < Infinity) {
        const bar = el("i", { class: "share" });
        bar.style.width = 100 * each / most + "%";
        cell.append(bar);
      }
      cell.dataset.points = each;
      return cell;
    });
    return el("tr", { "data-measure": name }, el("th", { scope: "row" }, name), ...cells);
  }
}

/** What yours breaks. */
class BrokenList {
  constructor() {
    this.list = el("ul", { class: "faults" });
    this.none = el("p", { class: "fine" }, "Nothing: every must and limit is met.");
    this.node = section("broken", "What yours breaks", this.none, this.list);
  }

  show(rules) {
    this.none.hidden = rules.length > 0;
    this.list.replaceChildren(...rules.map(rule =>
      el("li", { "data-cell": rule.cell }, rule.words + " ", el("span", { class: "quiet" }, rule.cell))));
    this.node.classList.toggle("bad", rules.length > 0);
  }
}
