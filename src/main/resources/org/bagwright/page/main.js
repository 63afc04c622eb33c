// Puts the page together.

class Page {
  constructor(book) {
    this.choices = new Choices(book);
    this.live = el("div", { class: "sr", role: "status", "aria-live": "polite" });
    this.note = el("p", { class: "notice", role: "alert", hidden: true });
    this.top = el("header", { class: "top" }, ...this.heading(book), this.actions());
    this.main = el("main");
    this.card = el("div", { class: "card-place" });
    document.body.append(this.top, this.note, this.main, this.live, this.card);
    this.choices.follow = () => this.show();
    window.addEventListener("hashchange", () => this.read());
    window.addEventListener("beforeprint", () => this.makeCard());
    window.addEventListener("afterprint", () => this.card.replaceChildren());
    document.addEventListener("keydown", event => {
      if ((event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === "z") {
        event.preventDefault();
        this.choices.undo();
      }
    });
  }

  heading(book) {
    const name = el("h1");
    this.name = name;
    if (book.golfers.length === 1) {
      return [name];
    }
    this.picker = el("select", { "aria-label": "Golfer", change: () => this.choices.pick(Number(this.picker.value)) },
      ...book.golfers.map((bag, index) => el("option", { value: index }, bag.name)));
    name.className = "sr";
    return [name, el("label", { class: "pick" }, el("span", null, "Golfer"), this.picker)];
  }

  actions() {
    const { choices } = this;
    this.score = el("p", { class: "score" });
    this.undo = button("plain", "Undo", () => choices.undo());
    this.toPlan = button("plain", "Plan", () => choices.chooseAll(choices.bag.plan), { "aria-label": "Back to the plan" });
    this.toToday = button("plain", "Today", () => choices.chooseAll(choices.bag.today), { "aria-label": "Back to today" });
    const print = button("plain print-button", "Print", () => window.print(), { "aria-label": "Print the golfer\u2019s card" });
    return el("div", { class: "actions", role: "group", "aria-label": "Set-up" }, this.score, this.undo, this.toPlan, this.toToday, print);
  }

  /** Takes the set-up from the address. */
  read() {
    const wrong = this.choices.read(window.location.hash);
    write(this.note, wrong);
    this.note.hidden = wrong === "";
    this.choices.before = [];
    this.show();
  }

  /** Makes what depends on the golfer. */
  build(bag) {
    const { choices } = this;
    const { book } = choices;
    this.shownBag = bag;
    if (this.ladder) {
      this.ladder.close();
    }
    this.scores = { today: scoreOf(book, bag, bag.today), plan: scoreOf(book, bag, bag.plan) };
    this.story = new Story(choices, bag, this.scores);
    this.ladder = new Ladder(choices, bag);
    this.steps = new Steps(choices, bag, this.scores);
    this.broken = new BrokenList();
    this.bench = new BenchList(choices, bag);
    this.points = new Points(choices, bag, this.scores);
    this.stock = new Stock(choices);
    this.team = this.team || new Team(choices, golfer => choices.pick(golfer));
    this.cards = bag.slots.map((slot, index) => new SlotCard(choices, bag, index));
    this.main.replaceChildren(
      el("div", { class: "side first" }, this.story.node, this.ladder.node, this.steps.node, this.broken.node),
      el("section", { class: "clubs", "aria-labelledby": "h-clubs" }, el("h2", { id: "h-clubs" }, "Clubs"), clubsKey(),
        el("div", { class: "grid" }, ...this.cards.map(card => card.node))),
      el("div", { class: "side last" }, this.bench.node, this.points.node, this.team.node, this.stock.node));
  }

  show() {
    const { choices } = this;
    const { book, bag } = choices;
    if (bag !== this.shownBag) {
      this.build(bag);
    }
    const now = scoreOf(book, bag, choices.yours);
    const taken = takenOf(book, choices.chosen);
    const rules = brokenRules(book, bag, now).concat(stockRules(book, taken));
    this.now = now;
    this.showTop(bag, now, rules);
    for (const part of [this.story, this.steps, this.bench, this.points]) {
      part.show(now);
    }
    this.ladder.show(now, this.scores.today);
    this.broken.show(rules);
    this.stock.show(taken);
    if (book.golfers.length > 1) {
      this.team.show();
    }
    this.cards.forEach(card => card.show(now, this.scores.today, rules));
  }

  showTop(bag, now, rules) {
    write(this.name, bag.name);
    document.title = bag.name + (this.choices.book.title ? ", " + this.choices.book.title : "");
    if (this.picker) {
      this.picker.value = String(this.choices.golfer);
    }
    write(this.score, "Yours " + fixed(now.points, 1) + (rules.length > 0 ? ", breaks " + rules.length : ""));
    this.score.classList.toggle("bad", rules.length > 0);
    this.undo.disabled = !this.choices.canUndo;
    this.toPlan.disabled = bag.plan.every((option, slot) => option === now.chosen[slot]);
    this.toToday.disabled = bag.today.every((option, slot) => option === now.chosen[slot]);
    write(this.live, yoursText(now, this.scores.plan) + " " + (rules.length === 0 ? "Nothing is broken."
      : rules.length + " broken: " + rules.slice(0, 2).map(rule => rule.words).join("; ") + "."));
  }

  makeCard() {
    this.card.replaceChildren(golferCard(this.choices, this.choices.bag, this.now, this.scores.today));
  }
}

function clubsKey() {
  const sign = name => el("span", { class: "mark " + name, "aria-hidden": "true" });
  return el("p", { class: "key" }, el("span", null, sign("yours"), " yours"), el("span", null, sign("plan"), " plan"),
    el("span", null, sign("today"), " today"), el("span", null, sign("closed"), " may not be planned"));
}

const started = document.getElementById("book");
if (started) {
  new Page(prepare(JSON.parse(started.textContent))).read();
}
