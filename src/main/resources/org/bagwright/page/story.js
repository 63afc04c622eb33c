// What a person reads first: what is uneven today, what the plan turns, what it brings.

const MOST_TOLD = 3;

function andMore(texts, most) {
  return texts.length <= most + 1 ? listText(texts) : texts.slice(0, most).join(", ") + " and " + (texts.length - most) + " more";
}

/** The gaps that are out of their bands, the worst first. */
function unevenGaps(score) {
  const off = gap => Math.abs(gap.gapM - gap.wishM);
  return score.gaps.filter(gap => gapFit(gap) !== "good").sort((a, b) => off(b) - off(a));
}

function todayStory(book, bag, today, broken) {
  const out = unevenGaps(today);
  const bands = new Set(today.gaps.map(gap => bandText(book, gap)));
  const band = bands.size === 1 ? " the wanted " + [...bands][0] + " " + book.distance : " what is wanted";
  const texts = out.map(gap => fixed(shown(book, gap.gapM), 1) + " after the "
    + clubOf(bag.slots[gap.from], today.chosen[gap.from]).name
    + (bands.size === 1 ? "" : " (wanted " + bandText(book, gap) + ")"));
  const first = texts.length === 0
    ? today.gaps.length === 0 ? "There are no gaps to judge." : "Every gap is in its band."
    : out.length + " of " + today.gaps.length + (out.length === 1 ? " gaps misses" : " gaps miss") + band + ": "
      + andMore(texts, MOST_TOLD) + ".";
  const rules = broken.length === 0 ? "" : " Broken: " + andMore(broken.map(rule => rule.words), 2) + ".";
  return first + rules;
}

function planStory(bag, from, to) {
  const works = bag.slots.map((slot, index) => ({ slot, index, texts: workTexts(slot, from[index], to[index], true) }))
    .filter(work => work.texts.length > 0);
  if (works.length === 0) {
    return "Nothing: today\u2019s bag is the plan.";
  }
  const told = works.map(({ slot, index, texts }) => {
    const club = clubOf(slot, to[index]) || clubOf(slot, from[index]);
    return club.name + " (" + texts.join("; ") + ")";
  });
  return (works.length === 1 ? "1 club: " : works.length + " clubs: ") + andMore(told, MOST_TOLD) + ".";
}

function gainStory(book, bag, today, plan, broken) {
  const out = [today, plan].map(score => unevenGaps(score).length);
  const gaps = plan.gaps.length === 0 ? ""
    : out[1] === 0 ? ", every gap in its band" : ", " + (plan.gaps.length - out[1]) + " of " + plan.gaps.length
      + " gaps in their bands" + (out[0] === out[1] ? "" : " (today " + (plan.gaps.length - out[0]) + ")");
  const rules = broken.length === 0 ? ". Every must and limit is met."
    : ". Still broken: " + andMore(broken.map(rule => rule.words), 2) + ". " + book.verdict + ".";
  return fixed(today.points, 1) + " \u2192 " + fixed(plan.points, 1) + " points" + gaps + rules;
}

class Story {
  constructor(choices, bag, scores) {
    const { book } = choices;
    const rules = score => brokenRules(book, bag, score);
    this.tiles = ["today", "plan", "yours"].map(name => new Tile(name));
    this.yours = el("dd");
    this.yoursName = el("dt", null, "Yours");
    this.node = section("story", "At a glance",
      el("div", { class: "tiles" }, ...this.tiles.map(tile => tile.node)),
      el("dl", null,
        el("dt", null, "Today"), el("dd", null, todayStory(book, bag, scores.today, rules(scores.today))),
        el("dt", null, "The plan changes"), el("dd", null, planStory(bag, bag.today, bag.plan)),
        el("dt", null, "It brings"), el("dd", null, gainStory(book, bag, scores.today, scores.plan, rules(scores.plan))),
        this.yoursName, this.yours));
    this.scores = scores;
  }

  show(now) {
    const { today, plan } = this.scores;
    const most = Math.max(today.points, plan.points, now.points);
    [today, plan, now].forEach((score, place) => this.tiles[place].show(score, most));
    const words = yoursText(now, plan);
    write(this.yours, words);
    this.yours.hidden = this.yoursName.hidden = now.chosen.every((option, slot) => option === plan.chosen[slot]);
  }
}

/** Yours against the plan. */
function yoursText(now, plan) {
  const more = now.points - plan.points;
  const size = fixed(Math.abs(more), 2);
  return size === "0.00" ? "As many points as the plan."
    : fixed(now.points, 2) + " points, " + size + (more > 0 ? " more than the plan." : " less than the plan.");
}

/** Points with a bar: solid what is missed, hatched what is not known. */
class Tile {
  constructor(name) {
    this.value = el("strong");
    this.parts = el("span", { class: "quiet" });
    this.miss = el("i", { class: "miss" });
    this.doubt = el("i", { class: "doubt" });
    this.node = el("div", { class: "tile " + name }, el("span", { class: "name" }, "points " + name), this.value,
      el("div", { class: "bar", "aria-hidden": "true" }, this.miss, this.doubt), this.parts);
  }

  show(score, most) {
    write(this.value, fixed(score.points, 1));
    this.value.dataset.points = score.points;
    this.value.dataset.breaks = score.breaks;
    const width = points => (most > 0 ? 100 * Math.max(0, points) / most : 0) + "%";
    this.miss.style.width = width(score.points - score.doubt);
    this.doubt.style.width = width(score.doubt);
    const parts = [score.doubt === 0 ? "" : fixed(score.doubt, 1) + " is doubt", score.breaks > 0 ? "rules broken" : ""];
    write(this.parts, parts.filter(part => part).join(", "));
    this.node.classList.toggle("bad", score.breaks > 0);
  }
}
