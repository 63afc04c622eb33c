// The head from above, as its golfer sees it: the leading edge against the target line.

/** Angles are drawn larger, or nobody would see them. */
const LOOK_TIMES = 3;

/** Outlines with the leading edge on the line x = 0, target to the left, toe up; in a square of 100 about (50, 50). */
const HEADS = {
  driver: "M38 20 C34 34 34 62 38 78 C52 88 84 80 88 52 C90 26 62 10 38 20 Z",
  wood: "M38 24 C35 36 35 62 38 76 C50 84 74 76 78 52 C79 30 58 16 38 24 Z",
  hybrid: "M38 26 C36 36 36 62 38 75 C48 80 64 74 67 53 C68 34 54 20 38 26 Z",
  iron: "M38 20 L38 76 C42 79 47 79 49 76 C50 60 50 38 47 20 C44 15 40 16 38 20 Z",
  wedge: "M38 18 L38 76 C43 79 50 79 52 76 C54 58 53 36 49 18 C45 12 40 13 38 18 Z",
  putter: "M38 24 L38 76 L54 76 L54 24 Z",
};

/** A drawing that is turned later by turnLook. */
function lookDrawing(left, kind) {
  const head = svg("g", { class: "head" },
    svg("path", { d: HEADS[kind] || HEADS.iron }),
    svg("line", { x1: 38, y1: 18, x2: 38, y2: 79, class: "edge" }),
    svg("circle", { cx: 46, cy: 82, r: 4, class: "hosel" }));
  const picture = svg("g", left ? { transform: "translate(100 0) scale(-1 1)" } : null,
    svg("line", { x1: 2, y1: 50, x2: 98, y2: 50, class: "aim" }),
    svg("path", { d: "M2 50 L10 46 M2 50 L10 54", class: "aim" }),
    svg("line", { x1: 38, y1: 6, x2: 38, y2: 94, class: "square" }),
    head,
    svg("circle", { cx: 28, cy: 50, r: 6, class: "ball" }));
  const drawing = svg("svg", { viewBox: "0 0 100 100", class: "look", role: "img" }, picture);
  return { drawing, head, kind };
}

function turnLook(look, closedDeg, kind) {
  look.head.setAttribute("transform", "rotate(" + fixed(-closedDeg * LOOK_TIMES, 2) + " 38 50)");
  look.drawing.setAttribute("aria-label", "From above: " + sitsText(closedDeg) + ", angle drawn " + LOOK_TIMES + " times");
  if (look.kind !== kind) {
    look.kind = kind;
    look.head.firstChild.setAttribute("d", HEADS[kind] || HEADS.iron);
  }
}
