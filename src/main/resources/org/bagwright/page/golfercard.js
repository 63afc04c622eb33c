// The golfer's card: what is printed, on one page.

const CARD_WIDTH = 660;

/** A row of the card for each club that is or was in the bag. */
function cardRow(book, bag, now, today, slot, index) {
  const [from, to] = [today.chosen[index], now.chosen[index]];
  const club = clubOf(slot, to) || clubOf(slot, from);
  if (!club) {
    return null;
  }
  const far = valueM => valueM === null ? "" : fixed(shown(book, valueM), 0);
  const gapM = score => {
    const gap = score.gaps.find(each => each.from === index);
    return gap ? gap.gapM : null;
  };
  const setting = clubOf(slot, to) && club.sleeve !== undefined ? club.settings[cost(slot, "setting", to)] : "";
  const cells = [far(figure(slot, "carryM", from)), far(figure(slot, "carryM", to)), far(gapM(today)), far(gapM(now)),
    setting, newsText(slot, from, to)];
  return el("tr", from === to ? null : { class: "moved" }, el("th", { scope: "row" }, club.name),
    ...cells.map((text, place) => el("td", place === 5 ? { class: "text" } : null, text)));
}

/** The card as it is printed; unlike the page it is always light. */
function golferCard(choices, bag, now, today) {
  const { book } = choices;
  const ladder = new Ladder(choices, bag);
  ladder.close();
  Object.assign(ladder, { now, today, forGolfer: true });
  const changed = bag.slots.filter((slot, index) => now.chosen[index] !== bag.today[index]).length;
  const d = " [" + book.distance + "]";
  const heads = ["Club", "Carry before" + d, "Carry now" + d, "Gap before" + d, "Gap now" + d, "Setting", "What was changed"];
  return el("section", { class: bag.slots.length > 14 ? "golfer-card many" : "golfer-card", "aria-label": "Card to print" },
    el("h1", null, bag.name + ": your clubs"),
    el("p", null, [book.title, changed === 1 ? "1 club changed" : changed + " clubs changed"].filter(text => text).join(". ") + "."),
    el("p", { class: "fill" }, "Date ", el("span"), " Fitted by ", el("span")),
    ladder.drawing(CARD_WIDTH),
    el("table", null, el("thead", null, el("tr", null, ...heads.map(text => el("th", { scope: "col" }, text)))),
      el("tbody", null, ...bag.slots.map((slot, index) => cardRow(book, bag, now, today, slot, index)).filter(row => row))),
    el("p", { class: "note" }, "Hollow: before. Solid: now. Carry: how far the ball can be expected to fly, as a mean of many shots."
      + " Gap: how much further than the next club. During a round nothing on a club may be adjusted (Rules of Golf, 4.1a)."));
}
