// What a choice of options costs: the sums that the formulas of the sheet Plan make. No physics.

/** How many factors of doubt all clubs of a bag share. */
const SHARED = 8;

/** The columns of a slot as plain arrays, one value for each option. */
function readColumns(slot) {
  const columns = {};
  for (const [name, packed] of Object.entries(slot.columns)) {
    const { v, i } = packed;
    columns[name] = i ? i.map(place => v[place]) : v.length === slot.count ? v : new Array(slot.count).fill(v[0]);
  }
  slot.columns = columns;
  slot.factorsM = [];
  for (let factor = 0; factor < SHARED; factor++) {
    slot.factorsM.push(columns["factorM" + factor]);
  }
}

/** A count or a cost of an option; 0 where nothing is written. */
function cost(slot, name, option) {
  const column = slot.columns[name];
  return column ? column[option] : 0;
}

/** A figure of an option; null where it has none. */
function figure(slot, name, option) {
  const column = slot.columns[name];
  return column ? column[option] : null;
}

/** The club of an option; null for a slot that is left empty. */
function clubOf(slot, option) {
  return slot.clubs[cost(slot, "club", option)] || null;
}

function squared(measure, off) {
  const tolerances = off / measure.tolerance;
  return measure.importance * tolerances * tolerances;
}

/** Tolerances in thousandths, rounded up; nothing for what is only noise of the arithmetic. */
function thousandths(tolerances) {
  return tolerances > 1e-9 ? Math.ceil(tolerances * 1000 - 1e-6) : 0;
}

/** How far a deviation breaks the must of a measure, in thousandths of its tolerance. */
function mustBreaks(measure, off) {
  return measure.must ? thousandths(Math.abs(off) / measure.tolerance - 1) : 0;
}

/** The variance of the gap between two clubs, m2. */
function gapVarianceM2(from, fromOption, to, toOption) {
  let sum = 0;
  for (let factor = 0; factor < SHARED; factor++) {
    const one = from.factorsM[factor];
    const other = to.factorsM[factor];
    const apart = (one ? one[fromOption] : 0) - (other ? other[toOption] : 0);
    sum += apart * apart;
  }
  return sum + cost(from, "ownVarianceM2", fromOption) + cost(to, "ownVarianceM2", toOption);
}

/** One gap with what it costs and breaks. */
function gapTerm(book, bag, chosen, from, to) {
  const measure = book.measures.find(each => each.scope === "NEIGHBOURS");
  const slot = bag.slots[from];
  const gapM = figure(slot, "carryM", chosen[from]) - figure(bag.slots[to], "carryM", chosen[to]);
  const wishM = figure(slot, "wishM", chosen[from]);
  const varianceM2 = gapVarianceM2(slot, chosen[from], bag.slots[to], chosen[to]);
  const leastM = figure(slot, "gapLeastM", chosen[from]);
  const mostM = figure(slot, "gapMostM", chosen[from]);
  const doubt = measure.likely
    ? measure.importance * varianceM2 / (measure.tolerance * measure.tolerance) : 0;
  const below = leastM === null ? 0 : Math.max(0, leastM - gapM);
  const above = mostM === null ? 0 : Math.max(0, gapM - mostM);
  const limited = leastM !== null || mostM !== null;
  return {
    from, to, gapM, wishM, doubt,
    sdM: Math.sqrt(varianceM2),
    goodLeastM: limited ? leastM : wishM - measure.tolerance,
    goodMostM: limited ? mostM : wishM + measure.tolerance,
    points: squared(measure, gapM - wishM) + doubt,
    mustBreaks: mustBreaks(measure, gapM - wishM),
    below: thousandths(below / measure.tolerance),
    above: thousandths(above / measure.tolerance),
    orderBreaks: gapM > 0 ? 0 : 1000 + Math.ceil(-gapM * 1000 - 1e-6),
  };
}

/** The gaps between neighbours that fly. */
function gapTerms(book, bag, chosen, flying) {
  const gaps = [];
  for (let place = 1; place < flying.length; place++) {
    gaps.push(gapTerm(book, bag, chosen, flying[place - 1], flying[place]));
  }
  return gaps;
}

/** How far the longest club flies short of today's; null if nothing flies. */
function reachTerm(book, bag, chosen, flying) {
  if (flying.length === 0 || bag.longestTodayM === undefined) {
    return null;
  }
  const measure = book.measures.find(each => each.scope === "LONGEST");
  const carryM = figure(bag.slots[flying[0]], "carryM", chosen[flying[0]]);
  const shortM = Math.max(0, bag.longestTodayM - carryM);
  return {
    index: flying[0], carryM, shortM,
    points: squared(measure, shortM),
    mustBreaks: mustBreaks(measure, shortM),
  };
}

/** How clubs of a group differ from its mean. */
function spreadTerms(book, bag, chosen) {
  const measure = book.measures.find(each => each.scope === "GROUP");
  const groups = new Map();
  const members = [];
  bag.slots.forEach((slot, index) => {
    const group = figure(slot, "group", chosen[index]);
    if (group !== null) {
      const value = figure(slot, "match", chosen[index]);
      members.push({ index, group, value });
      groups.set(group, (groups.get(group) || []).concat(value));
    }
  });
  const means = new Map();
  for (const [group, values] of groups) {
    means.set(group, values.sort((a, b) => a - b).reduce((sum, value) => sum + value, 0) / values.length);
  }
  return members.map(({ index, group, value }) => {
    const off = value - means.get(group);
    return { index, group, off, points: squared(measure, off), mustBreaks: mustBreaks(measure, off) };
  });
}

/** What options cost by themselves, added to a score. */
function addOwn(book, bag, chosen, score) {
  bag.slots.forEach((slot, index) => {
    const option = chosen[index];
    book.measures.forEach((measure, place) => {
      score.byMeasure[place] += cost(slot, "points" + place, option);
      score.breaks += cost(slot, "breaks" + place, option);
    });
    book.limits.forEach((limit, place) => {
      score.breaks += cost(slot, "limits" + place, option);
    });
    score.doubt += cost(slot, "doubtPoints", option);
    score.changes += cost(slot, "changes", option);
    score.clubs += clubOf(slot, option) ? 1 : 0;
    score.excess += figure(slot, "closed", option) === null ? 0 : 1;
  });
}

/** What clubs cost together, added to a score. */
function addTogether(book, bag, chosen, score) {
  const place = scope => book.measures.findIndex(each => each.scope === scope);
  const terms = [
    ...score.gaps.map(term => [place("NEIGHBOURS"), term]),
    ...(score.reach ? [[place("LONGEST"), score.reach]] : []),
    ...score.spreads.map(term => [place("GROUP"), term]),
  ];
  for (const [measure, term] of terms) {
    score.byMeasure[measure] += term.points;
    score.breaks += term.mustBreaks;
  }
  for (const gap of score.gaps) {
    score.breaks += gap.below + gap.above + gap.orderBreaks;
    score.doubt += gap.doubt;
  }
}

/**
 * What one bag costs.
 *
 * chosen has the index of an option for each slot. Points are the penalty; breaks are thousandths of a tolerance, with 1000
 * for each closed option, change and club too many.
 */
function scoreOf(book, bag, chosen) {
  const flying = bag.slots.map((slot, index) => index)
    .filter(index => figure(bag.slots[index], "carryM", chosen[index]) !== null);
  const score = {
    chosen, flying,
    byMeasure: book.measures.map(() => 0),
    doubt: 0, breaks: 0, changes: 0, clubs: 0, excess: 0,
    gaps: gapTerms(book, bag, chosen, flying),
    reach: reachTerm(book, bag, chosen, flying),
    spreads: spreadTerms(book, bag, chosen),
  };
  addOwn(book, bag, chosen, score);
  addTogether(book, bag, chosen, score);
  const most = bag.mostChanges === undefined ? Infinity : bag.mostChanges;
  score.excess += Math.max(0, score.changes - most) + Math.max(0, score.clubs - book.mostClubs);
  score.breaks += 1000 * score.excess;
  score.points = score.byMeasure.reduce((sum, points) => sum + points, 0);
  return score;
}

/** How many pieces of each item of the stock the bags take together; chosen has a choice for each bag. */
function takenOf(book, chosen) {
  return book.stock.map((item, place) => {
    let taken = 0;
    book.golfers.forEach((bag, index) => bag.slots.forEach((slot, at) => {
      taken += cost(slot, "takes" + place, chosen[index][at]);
    }));
    return taken;
  });
}

/** The chance, 0 to 1, that the true gap is good. */
function gapChance(gap) {
  const least = gap.goodLeastM === null ? -Infinity : gap.goodLeastM;
  const most = gap.goodMostM === null ? Infinity : gap.goodMostM;
  if (gap.sdM === 0) {
    return gap.gapM >= least && gap.gapM <= most ? 1 : 0;
  }
  return Math.max(0, normalBelow((most - gap.gapM) / gap.sdM) - normalBelow((least - gap.gapM) / gap.sdM));
}
