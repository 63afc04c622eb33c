// What a choice breaks, in the program's own words.

/** A figure with one decimal, or as many as it takes to look different from its bound. */
function apart(figureShown, bound) {
  for (let decimals = 1; decimals < 4; decimals++) {
    if (fixed(figureShown, decimals) !== fixed(bound, decimals)) {
      return fixed(figureShown, decimals);
    }
  }
  return fixed(figureShown, 4);
}

function lookText(degrees, bound) {
  return apart(Math.abs(degrees), Math.abs(bound)) + (degrees < 0 ? " open" : " closed");
}

/** On its own side a bound is a most; on the other side it asks for so much at least. */
function acceptedLook(kind, bound) {
  const ownSide = kind.least ? bound <= 0 : bound >= 0;
  const side = bound === 0 ? "" : bound < 0 ? " open" : " closed";
  return "at " + (ownSide ? "most " : "least ") + trimmed(Math.abs(bound), 2) + side;
}

/** A broken limit. */
function limitWords(book, kind, who, value, bound) {
  const accepted = ", at " + (kind.least ? "least " : "most ");
  if (kind.quantity === "sits") {
    return who + " sits " + lookText(value, bound) + ", " + acceptedLook(kind, bound) + " accepted";
  }
  if (kind.quantity === "landing") {
    return who + " comes down at " + apart(value, bound) + " deg" + accepted + trimmed(bound, 2) + " accepted";
  }
  const [figureShown, boundShown] = [shown(book, value), shown(book, bound)];
  const verb = kind.quantity === "carry" ? " carries " : ": gap ";
  return who + verb + apart(figureShown, boundShown) + " " + book.distance + accepted + trimmed(boundShown, 2) + " accepted";
}

/** A value outside what is wanted by more than the tolerance. */
function mustWords(book, measure, what, value, least, most) {
  const above = most !== null && value > most;
  const bound = above ? most + measure.tolerance : least - measure.tolerance;
  const [figureShown, limit] = [value, bound].map(each => measure.distance ? shown(book, each) : each);
  return what + " " + apart(figureShown, limit) + " " + measure.unit + ", must be at " + (above ? "most " : "least ")
    + trimmed(limit, 2);
}

/** The value by which a measure judges a club by itself. */
function ownValue(slot, option, measure) {
  const columns = { loft: "loftDeg", lie: "lieDeg", sits: "sitsDeg", carry: "carryM", swingweight: "swingweight" };
  return figure(slot, columns[measure.name], option);
}

const LIMIT_COLUMNS = { sits: "sitsDeg", carry: "carryM", landing: "landingDeg" };

/** What one bag breaks: texts with the cell that makes the rule. */
function brokenRules(book, bag, score) {
  return bag.slots.flatMap((slot, index) => slotRules(book, bag, score, slot, index))
    .concat(bagRules(book, bag, score));
}

function slotRules(book, bag, score, slot, index) {
  const option = score.chosen[index];
  const club = clubOf(slot, option);
  const found = closedRules(slot, option, club);
  if (club) {
    const gap = score.gaps.find(each => each.from === index) || null;
    const pair = gap ? club.name + " to " + clubOf(bag.slots[gap.to], score.chosen[gap.to]).name : "";
    found.push(...limitRules(book, slot, option, club, gap, pair));
    book.measures.forEach((measure, place) => {
      found.push(...mustRules(book, bag, score, { slot, option, index, club, gap, pair, measure, place }));
    });
    if (gap && gap.orderBreaks > 0) {
      found.push({ cell: club.cell, words: pair + ": the carry does not fall from one club to the next ("
        + fixed(shown(book, gap.gapM), 1) + " " + book.distance + ")" });
    }
  }
  return found.map(rule => ({ index, ...rule }));
}

function closedRules(slot, option, club) {
  const closed = figure(slot, "closed", option);
  if (closed === null) {
    return [];
  }
  const setting = club && club.sleeve !== undefined ? ", setting " + club.settings[cost(slot, "setting", option)] + "," : "";
  return closed.split(", ").map(reason => ({
    cell: slot.cell,
    words: (club ? club.name : "left out") + setting + " may not be planned (" + reason + ")",
  }));
}

function limitRules(book, slot, option, club, gap, pair) {
  const found = [];
  book.limits.forEach((kind, place) => {
    const ofGap = kind.quantity === "gap";
    const broken = ofGap ? gap && (kind.least ? gap.below : gap.above) : cost(slot, "limits" + place, option);
    if (broken > 0) {
      const limit = club.limits.find(each => each.kind === place);
      const value = ofGap ? gap.gapM : figure(slot, LIMIT_COLUMNS[kind.quantity], option);
      found.push({ cell: limit.cell, words: limitWords(book, kind, ofGap ? pair : club.name, value, limit.value) });
    }
  });
  return found;
}

function mustRules(book, bag, score, at) {
  const { slot, option, index, club, gap, pair, measure, place } = at;
  const rule = (what, value, least, most) => [{ cell: club.cell, words: mustWords(book, measure, what, value, least, most) }];
  if (measure.scope === "CLUB" && cost(slot, "breaks" + place, option) > 0) {
    const [least, most] = club.wanted[measure.name];
    return rule(club.name + ": " + measure.name, ownValue(slot, option, measure), least, most);
  }
  if (measure.scope === "NEIGHBOURS" && gap && gap.mustBreaks > 0) {
    return rule(pair + ": gap", gap.gapM, gap.wishM, gap.wishM);
  }
  const reach = score.reach;
  if (measure.scope === "LONGEST" && reach && reach.index === index && reach.mustBreaks > 0) {
    return rule(club.name + ": carry as the longest club", reach.carryM, bag.longestTodayM, null);
  }
  const spread = score.spreads.find(each => each.index === index);
  if (measure.scope === "GROUP" && spread && spread.mustBreaks > 0) {
    return rule(club.name + ": from the mean of its group (" + spread.group + ")", spread.off, 0, 0);
  }
  return [];
}

function bagRules(book, bag, score) {
  const found = [];
  if (bag.mostChanges !== undefined && score.changes > bag.mostChanges) {
    found.push(score.changes + " items changed, at most " + bag.mostChanges + " accepted");
  }
  if (score.clubs > book.mostClubs) {
    found.push(score.clubs + " clubs carried, at most 14 in a round");
  }
  return found.map(words => ({ index: -1, cell: bag.cell, words: bag.name + ": " + words }));
}

/** What all bags together take beyond the stock. */
function stockRules(book, taken) {
  return book.stock.flatMap((item, place) => taken[place] > item.available
    ? [{ index: -1, cell: item.cell, words: taken[place] + " of " + item.item + " taken, only " + item.available + " there" }]
    : []);
}
