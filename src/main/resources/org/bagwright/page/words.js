// Choices and figures in words.

/** A distance in metres in the book's unit. */
function shown(book, valueM) {
  return valueM / book.mPer;
}

/** How a head sits, such as 1.2 closed, 0.4 open or square. */
function sitsText(closedDeg) {
  const size = fixed(Math.abs(closedDeg), 1);
  return size === "0.0" ? "square" : size + (closedDeg > 0 ? " closed" : " open");
}

/** A bend with its sign. */
function bendText(bendDeg) {
  const text = trimmed(bendDeg, 4);
  return text === "0" || text.startsWith("-") ? text : "+" + text;
}

/** What is set for an option, such as setting 4, weighting heel, loft +1. */
function choiceText(slot, option) {
  const club = clubOf(slot, option);
  if (!club) {
    return "left out";
  }
  const words = [];
  if (slot.clubs.length > 1 || slot.empty >= 0) {
    words.push(club.name);
  }
  if (club.sleeve !== undefined) {
    words.push("setting " + club.settings[cost(slot, "setting", option)]);
  }
  if (club.weightings.length > 1) {
    words.push("weights " + club.weightings[cost(slot, "weighting", option)]);
  }
  for (const [name, label] of [["loftBend", "loft "], ["lieBend", "lie "]]) {
    const bend = cost(slot, name, option);
    if (bendText(bend) !== "0") {
      words.push(label + bendText(bend));
    }
  }
  return words.join(", ") || "as it is";
}

/** One bend to make, in words; nothing where it stays. */
function bendWork(before, after, more, less) {
  const change = after - before;
  if (bendText(change) === "0") {
    return [];
  }
  const whole = bendText(before) === "0" ? "" : " (" + bendText(before) + " \u2192 " + bendText(after) + " in all)";
  return ["bend " + trimmed(Math.abs(change), 4) + "\u00b0 " + (change > 0 ? more : less) + whole];
}

/** Everything that is done on the way from one option of a slot to another; in brief without turns and pieces. */
function workTexts(slot, from, to, brief) {
  const before = clubOf(slot, from);
  const club = clubOf(slot, to);
  if (from === to) {
    return [];
  }
  if (!club) {
    return ["leave out of the bag"];
  }
  const texts = [];
  let start = from;
  if (before !== club) {
    texts.push(before ? "put in for " + before.name : "put into the bag");
    start = club.today === undefined ? to : club.today;
  }
  const setting = [cost(slot, "setting", start), cost(slot, "setting", to)];
  if (setting[0] !== setting[1]) {
    const turn = club.turns[setting[1]];
    texts.push("sleeve " + setting.map(place => club.settings[place]).join(" \u2192 ") + (turn && !brief ? ", " + turn : ""));
  }
  const weighting = [cost(slot, "weighting", start), cost(slot, "weighting", to)];
  if (weighting[0] !== weighting[1]) {
    const moves = club.moves[weighting[1]];
    texts.push("weights " + weighting.map(place => club.weightings[place]).join(" \u2192 ") + (moves && !brief ? ": " + moves : ""));
  }
  return texts
    .concat(bendWork(cost(slot, "loftBend", start), cost(slot, "loftBend", to), "weaker", "stronger"))
    .concat(bendWork(cost(slot, "lieBend", start), cost(slot, "lieBend", to), "more upright", "flatter"));
}

/** What a golfer notices of a change, in words that need no bench. */
function newsText(slot, from, to) {
  const before = clubOf(slot, from);
  const club = clubOf(slot, to);
  if (from === to) {
    return "as before";
  }
  if (!club) {
    return "no longer in the bag";
  }
  if (before !== club) {
    return before ? "new, in place of " + before.name : "new in the bag";
  }
  const words = [];
  const add = (name, least, more, less) => {
    const change = figure(slot, name, to) - figure(slot, name, from);
    if (Math.abs(change) >= least) {
      words.push(change > 0 ? more : less);
    }
  };
  add("loftDeg", 0.25, "more loft", "less loft");
  add("lieDeg", 0.25, "more upright", "flatter");
  add("sitsDeg", 0.5, "more closed", "more open");
  if (cost(slot, "weighting", from) !== cost(slot, "weighting", to)) {
    words.push("weights moved");
  }
  return words.join(", ") || "adjusted";
}

/** a, b and c. */
function listText(words) {
  return words.length < 2 ? words.join("") : words.slice(0, -1).join(", ") + " and " + words[words.length - 1];
}
