// Several golfers side by side, and the stock that they share.

/** All golfers with their points; empty for one golfer. */
class Team {
  constructor(choices, pick) {
    this.choices = choices;
    this.known = [];
    const { book } = choices;
    this.fixed = book.golfers.map(bag => [bag.today, bag.plan].map(chosen => scoreOf(book, bag, chosen)));
    this.rows = book.golfers.map((bag, index) => this.row(bag, index, pick));
    this.total = el("tr", { class: "total" }, el("th", { scope: "row" }, "all"), el("td"), el("td"), el("td", { class: "now" }));
    this.node = section("team", "Golfers", el("div", { class: "scroll" }, el("table", { class: "numbers" },
      el("thead", null, el("tr", null, ...["Golfer", "Today", "Plan", "Yours"].map(name => el("th", { scope: "col" }, name)))),
      el("tbody", null, ...this.rows, this.total))));
    this.node.hidden = book.golfers.length < 2;
  }

  row(bag, index, pick) {
    return el("tr", null, el("th", { scope: "row" }, button("link", bag.name, () => pick(index))),
      ...this.fixed[index].map(score => el("td", score.breaks > 0 ? { class: "out" } : null, fixed(score.points, 1))),
      el("td", { class: "now" }));
  }

  /** What a bag costs as it is set now; counted again only when that changes. */
  score(bag, index, chosen) {
    const key = chosen.join(".");
    if (!this.known[index] || this.known[index].key !== key) {
      this.known[index] = { key, score: scoreOf(this.choices.book, bag, chosen) };
    }
    return this.known[index].score;
  }

  show() {
    const { book, chosen, golfer } = this.choices;
    const scores = book.golfers.map((bag, index) => this.score(bag, index, chosen[index]));
    scores.forEach((score, index) => {
      const cell = this.rows[index].lastChild;
      write(cell, fixed(score.points, 1));
      cell.classList.toggle("out", score.breaks > 0);
      this.rows[index].classList.toggle("here", index === golfer);
    });
    const sum = each => fixed(each.reduce((all, score) => all + score.points, 0), 1);
    [this.fixed.map(each => each[0]), this.fixed.map(each => each[1]), scores].forEach((each, place) =>
      write(this.total.children[place + 1], sum(each)));
  }
}

/** What all golfers together take of what is scarce. */
class Stock {
  constructor(choices) {
    this.book = choices.book;
    this.body = el("tbody");
    this.node = section("stock", "Stock", el("p", { class: "quiet" },
      this.book.golfers.length > 1 ? "What all " + this.book.golfers.length + " golfers take together, as set here."
        : "What yours takes. What is in the clubs today counts as there."),
    el("div", { class: "scroll" }, el("table", { class: "numbers" }, el("thead", null, el("tr", null,
      ...["Item", "Taken", "There"].map(name => el("th", { scope: "col" }, name)))), this.body)));
    this.node.hidden = this.book.stock.length === 0;
  }

  show(taken) {
    this.body.replaceChildren(...this.book.stock.map((item, place) => el("tr", { class: taken[place] > item.available ? "out" : null },
      el("th", { scope: "row" }, item.item), el("td", { class: "taken" }, String(taken[place])), el("td", null, String(item.available)))));
  }
}
