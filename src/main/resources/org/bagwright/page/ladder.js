// The ladder: carries from left to right, a lane for each club, gaps as steps, and the band in which the next club is wanted.

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
