// The ladder: carries from left to right, a lane for each club, gaps as steps, and the band in which the next club is wanted.

const LADDER = { lane: 44, top: 6, bottom: 24, dot: 6, narrow: 480 };

/** The columns at both sides of the lanes: names, and figures of the gaps. */
function ladderSides(width) {
  return width < LADDER.narrow ? { name: 82, letters: 11, gap: 58, room: 12 } : { name: 124, letters: 17, gap: 88, room: 34 };
}

/** Whether a gap is in its band. */
function gapFit(gap) {
  const low = gap.goodLeastM === null ? -Infinity : gap.goodLeastM;
  const high = gap.goodMostM === null ? Infinity : gap.goodMostM;
  return gap.gapM < low - 1e-9 ? "tight" : gap.gapM > high + 1e-9 ? "wide" : "good";
}

/** The band of a gap in words, such as 16.9 to 22.9. */
function bandText(book, gap) {
  const end = valueM => fixed(shown(book, valueM), 1);
  if (gap.goodLeastM === null) {
    return "at most " + end(gap.goodMostM);
  }
  return gap.goodMostM === null ? "at least " + end(gap.goodLeastM) : end(gap.goodLeastM) + " to " + end(gap.goodMostM);
}

/** From carries to places, with room for every dot and band. */
function ladderScale(carriesM, width) {
  const least = Math.min(...carriesM);
  const most = Math.max(...carriesM);
  const room = Math.max(2, (most - least) * 0.06);
  const sides = ladderSides(width);
  const left = sides.name;
  const right = width - sides.gap - sides.room;
  return {
    left, right,
    at: carryM => left + (right - left) * (carryM - least + room) / (most - least + 2 * room),
    leastM: least - room, mostM: most + room,
  };
}

/** Lines at round carries. */
function ladderGrid(book, scale, height) {
  const span = shown(book, scale.mostM - scale.leastM);
  const step = [5, 10, 20, 25, 50, 100].find(each => (scale.right - scale.left) * each / span >= 42) || 100;
  const lines = [];
  const first = Math.ceil(shown(book, scale.leastM) / step) * step;
  for (let carry = first; carry <= shown(book, scale.mostM); carry += step) {
    const x = scale.at(carry * book.mPer);
    lines.push(svg("line", { x1: x, x2: x, y1: 0, y2: height - LADDER.bottom + 4, class: "grid" }));
    lines.push(label(x, height - 6, "tick", String(carry)));
  }
  return lines;
}

/** The mark of a carry: a disc, or a diamond where the gap before it is out of its band. */
function carryMark(x, y, fit) {
  const r = LADDER.dot;
  return fit === "good"
    ? svg("circle", { cx: x, cy: y, r, class: "yours" })
    : svg("path", { d: `M${x} ${y - r - 2} l${r + 2} ${r + 2} l${-r - 2} ${r + 2} l${-r - 2} ${-r - 2} Z`, class: "yours out" });
}

/** The gap between two lanes: the step, and its figure at the right. */
function gapDrawing(book, gap, scale, ys, carriesM, width, sure) {
  const fit = gapFit(gap);
  const [x1, x2] = carriesM.map(scale.at);
  const high = gap.goodLeastM === null ? scale.right + 20 : Math.min(scale.right + 20, scale.at(carriesM[0] - gap.goodLeastM));
  const low = gap.goodMostM === null ? scale.left : Math.max(scale.left, scale.at(carriesM[0] - gap.goodMostM));
  const middle = (ys[0] + ys[1]) / 2;
  const sign = fit === "good" ? "" : fit === "wide" ? "\u2194 " : "\u2192\u2190 ";
  const at = width - ladderSides(width).gap + 6;
  const unit = width < LADDER.narrow ? "" : " " + book.distance;
  const chance = fixed(100 * gapChance(gap), 0) + " %" + (unit ? " sure" : "");
  return svg("g", { class: fit },
    svg("rect", { x: low, y: ys[1] - 10, width: Math.max(2, high - low), height: 20, rx: 4, class: "band" }),
    svg("path", { d: `M${x1} ${ys[0]} V${ys[1]} H${x2}`, class: "step" }),
    label(at, middle - 1, "gap", sign + fixed(shown(book, gap.gapM), 1) + unit),
    label(at, middle + 13, "chance", fit !== "good" ? "too " + fit : sure ? chance : ""));
}

class Ladder {
  constructor(choices, bag) {
    this.choices = choices;
    this.book = choices.book;
    this.bag = bag;
    this.frame = el("div", { class: "frame" });
    this.table = el("table", { class: "numbers" });
    this.more = el("details", { toggle: () => this.numbers() }, el("summary", null, "The same in numbers (" + this.book.distance + ")"),
      el("div", { class: "scroll" }, this.table));
    this.node = section("ladder", "Carries and gaps",
      el("p", { class: "key" },
        keyItem("today", "today"), keyItem("yours", "yours"), keyItem("yours out", "out of its band"), keyItem("band", "wanted")),
      this.frame, this.more);
    this.width = 0;
    this.size = new ResizeObserver(entries => {
      this.width = Math.floor(entries[0].contentRect.width);
      this.draw();
    });
    this.size.observe(this.frame);
  }

  show(now, today) {
    this.now = now;
    this.today = today;
    this.draw();
    this.numbers();
  }

  close() {
    this.size.disconnect();
  }

  carryM(score, index) {
    return figure(this.bag.slots[index], "carryM", score.chosen[index]);
  }

  /** The slots in which something flies, now or today. */
  lanes() {
    return this.bag.slots.map((slot, index) => index)
      .filter(index => this.carryM(this.now, index) !== null || this.carryM(this.today, index) !== null);
  }

  draw() {
    const { width } = this;
    const key = width + " " + (this.now ? this.now.chosen.join(".") : "");
    if (width < 100 || !this.now || key === this.drawn) {
      return;
    }
    this.drawn = key;
    this.frame.replaceChildren(this.drawing(width));
  }

  drawing(width) {
    const { book, bag, now, today } = this;
    const lanes = this.lanes();
    const lane = lanes.length > 8 ? LADDER.lane - 6 : LADDER.lane;
    const height = LADDER.top + lane * lanes.length + LADDER.bottom;
    const drawing = svg("svg", { width, height, viewBox: `0 0 ${width} ${height}`, role: "img", "aria-label": this.words() });
    const carriesM = lanes.flatMap(index => [this.carryM(now, index), this.carryM(today, index)]).filter(each => each !== null);
    if (carriesM.length === 0) {
      return el("p", { class: "quiet" }, "No club of this bag flies.");
    }
    const scale = ladderScale(carriesM.concat(this.bandsM(carriesM)), width);
    const y = new Map(lanes.map((index, place) => [index, LADDER.top + lane * (place + 0.5)]));
    drawing.append(...ladderGrid(book, scale, height));
    for (const gap of now.gaps) {
      drawing.append(gapDrawing(book, gap, scale, [y.get(gap.from), y.get(gap.to)],
        [this.carryM(now, gap.from), this.carryM(now, gap.to)], width, !this.forGolfer));
    }
    for (const index of lanes) {
      drawing.append(...this.lane(index, scale, y.get(index), width));
    }
    return drawing;
  }

  /** The ends of the bands, as far as they are not far from all carries. */
  bandsM(carriesM) {
    const [least, most] = [Math.min(...carriesM), Math.max(...carriesM)];
    const room = 0.15 * (most - least);
    return this.now.gaps
      .flatMap(gap => [gap.goodLeastM, gap.goodMostM].filter(end => end !== null).map(end => this.carryM(this.now, gap.from) - end))
      .map(carryM => Math.max(least - room, Math.min(most + room, carryM)));
  }

  lane(index, scale, y, width) {
    const { book, now, today, bag } = this;
    const slot = bag.slots[index];
    const club = clubOf(slot, now.chosen[index]) || clubOf(slot, today.chosen[index]);
    const [was, is] = [today, now].map(score => this.carryM(score, index));
    const nodes = [label(0, y + 4, "lane", short(club.name, ladderSides(width).letters))];
    if (was !== null) {
      nodes.push(svg("circle", { cx: scale.at(was), cy: y, r: LADDER.dot, class: "today" }));
    }
    if (is !== null) {
      const before = now.gaps.find(gap => gap.to === index);
      nodes.push(carryMark(scale.at(is), y, before ? gapFit(before) : "good"));
      nodes.push(label(scale.at(is), y - 12, "carry", fixed(shown(book, is), 1)));
    } else {
      nodes.push(label(scale.at(was) + 36, y + 4, "carry", "left out"));
    }
    return nodes;
  }

  words() {
    const { book, now } = this;
    const out = now.gaps.filter(gap => gapFit(gap) !== "good").length;
    return "Carries and gaps: " + now.gaps.length + " gaps, " + (out === 0 ? "all" : now.gaps.length - out)
      + " in their bands. " + now.gaps.map(gap => fixed(shown(book, gap.gapM), 1)).join(", ") + " " + book.distance;
  }

  /** The table, while it is open. */
  numbers() {
    if (!this.more.open) {
      return;
    }
    const { book, bag, now, today } = this;
    const far = valueM => valueM === null ? "" : fixed(shown(book, valueM), 1);
    const head = ["Club", "Carry today", "Carry yours", "Gap today", "Gap yours", "Wanted", "Sure"];
    const rows = this.lanes().map(index => {
      const [was, gap] = [today, now].map(score => score.gaps.find(each => each.from === index));
      const club = clubOf(bag.slots[index], now.chosen[index]) || clubOf(bag.slots[index], today.chosen[index]);
      const cells = [far(this.carryM(today, index)), far(this.carryM(now, index)), was ? far(was.gapM) : "",
        gap ? far(gap.gapM) : "", gap ? bandText(book, gap) : "", gap ? fixed(100 * gapChance(gap), 0) + " %" : ""];
      const row = el("tr", null, el("th", { scope: "row" }, club.name), ...cells.map(text => el("td", null, text)));
      if (gap) {
        row.dataset.gap = gap.gapM;
        row.dataset.points = gap.points;
      }
      return row;
    });
    this.table.replaceChildren(
      el("thead", null, el("tr", null, ...head.map(text => el("th", { scope: "col" }, text)))),
      el("tbody", null, ...rows));
  }
}

/** A name that has to fit. */
function short(name, most) {
  const letters = [...name];
  return letters.length <= most ? name : letters.slice(0, most - 1).join("") + "\u2026";
}

/** One sign of the key with its word. */
function keyItem(look, words) {
  const sign = look === "band" ? svg("rect", { x: 1, y: 3, width: 18, height: 12, rx: 3, class: "band" })
    : look === "today" ? svg("circle", { cx: 10, cy: 9, r: 6, class: "today" })
      : carryMark(10, 9, look === "yours" ? "good" : "wide");
  return el("span", null, svg("svg", { width: 20, height: 18, "aria-hidden": "true" }, sign), " " + words);
}
