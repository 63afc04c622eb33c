// The parts of the ladder: places, bands, steps and marks.

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
