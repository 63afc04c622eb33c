// How many changes, and the list for the bench.

class Steps {
  constructor(choices, bag, scores) {
    this.choices = choices;
    this.bag = bag;
    this.scores = bag.steps.map(step => scoreOf(choices.book, bag, step.chosen));
    this.today = scores.today;
    this.words = el("p", { class: "words", id: "step-words" });
    const last = bag.steps.length - 1;
    this.range = el("input", {
      type: "range", min: 0, max: Math.max(0, last), step: 1, "aria-label": "Number of changes",
      input: () => choices.chooseAll(bag.steps[Number(this.range.value)].chosen, "steps"),
      change: () => choices.endMerge(),
    });
    this.bars = el("div", { class: last > 7 ? "steps-bars crowded" : "steps-bars", "aria-hidden": "true" }, ...this.scores.map((score, place) => this.bar(score, place)));
    this.node = section("steps", "How many changes?", ...(bag.steps.length < 2
      ? [el("p", { class: "quiet" }, bag.steps.length === 0 ? "The best bags for fewer changes were not worked out in the time."
        : "No change makes this bag better.")]
      : [this.bars, this.range, this.words]));
  }

  bar(score, place) {
    const most = Math.max(...this.scores.map(each => each.points), 1e-9);
    const bar = el("i");
    bar.style.height = fixed(100 * score.points / most, 1) + "%";
    return el("span", null, el("b", null, fixed(score.points, 1)), el("span", { class: "column" }, bar),
      el("small", null, String(this.bag.steps[place].changes)));
  }

  /** The step whose set-up this is; -1 if it is none of them. */
  stepOf(chosen) {
    return this.bag.steps.findIndex(step => step.chosen.every((option, slot) => option === chosen[slot]));
  }

  show(now) {
    const at = this.stepOf(now.chosen);
    [...this.bars.children].forEach((bar, place) => bar.classList.toggle("here", place === at));
    if (at >= 0) {
      this.range.value = at;
    }
    const text = at < 0 ? "Yours is none of the best bags. Move the slider to see the best one for a number of changes."
      : this.stepText(at);
    write(this.words, text);
    this.range.setAttribute("aria-valuetext", text);
    this.range.classList.toggle("off", at < 0);
  }

  stepText(at) {
    const count = this.bag.steps[at].changes;
    const before = this.scores[0];
    const last = this.scores[this.scores.length - 1];
    const said = (count === 0 ? "No change" : count === 1 ? "1 change" : count + " changes") + ": "
      + fixed(this.scores[at].points, 2) + " points";
    const gain = before.points - this.scores[at].points;
    const all = before.points - last.points;
    const { breaks } = this.scores[at];
    const broken = breaks >= before.breaks ? "" : breaks === 0 ? ", and every must and limit is met" : ", and less is broken";
    return at === 0 || all <= 0 ? said + broken + "."
      : said + ". That brings " + fixed(gain, 1) + " of " + fixed(all, 1) + " points" + broken + ".";
  }
}

/** What is to be done from today's bag to yours, with ticks. */
class BenchList {
  constructor(choices, bag) {
    this.choices = choices;
    this.bag = bag;
    this.list = el("ul", { class: "todo" });
    this.none = el("p", { class: "quiet" }, "Nothing to do: yours is today\u2019s bag.");
    this.node = section("bench", "At the bench", el("p", { class: "quiet" }, "From today\u2019s bag to yours. Turns are as seen from the grip end."),
      this.none, this.list, nextWords(bag));
    this.key = "";
  }

  show(now) {
    const { bag, choices } = this;
    const ticks = choices.ticks[choices.golfer];
    const key = now.chosen.join(".") + "/" + [...ticks].join(".");
    if (key === this.key) {
      return;
    }
    this.key = key;
    const focused = document.activeElement && document.activeElement.id;
    const items = bag.slots.flatMap((slot, index) => this.item(slot, index, now.chosen[index], ticks));
    this.list.replaceChildren(...items);
    this.none.hidden = items.length > 0;
    if (focused && focused.startsWith("tick-") && document.getElementById(focused)) {
      document.getElementById(focused).focus();
    }
  }

  item(slot, index, option, ticks) {
    const from = this.bag.today[index];
    const texts = workTexts(slot, from, option);
    if (texts.length === 0) {
      return [];
    }
    const club = clubOf(slot, option);
    const box = el("input", {
      type: "checkbox", id: "tick-" + index,
      change: event => this.choices.tick(index, event.target.checked),
    });
    box.checked = ticks.has(index);
    const expect = club ? "then gauge loft " + fixed(figure(slot, "loftDeg", option), 1) + "\u00b0, lie "
      + fixed(figure(slot, "lieDeg", option), 1) + "\u00b0, sits " + sitsText(figure(slot, "sitsDeg", option)) : "";
    return [el("li", null, el("label", null, box,
      el("span", null, el("b", null, (club || clubOf(slot, from)).name), ": " + texts.join("; "),
        el("small", null, expect))))];
  }
}

/** What to measure next. */
function nextWords(bag) {
  const words = bag.next && bag.next.length > 0 ? bag.next : bag.measureNext ? [bag.measureNext] : [];
  return words.length === 0 ? null
    : el("div", { class: "next" }, el("h3", null, "What to measure next"), el("ul", null, ...words.map(text => el("li", null, text))));
}
