// What is chosen, what was chosen before, and both in the address behind #.

const MOST_UNDO = 500;

/** Letters that run from right to left, and signs that turn a line round. */
const TURNS_LINE = /[\u0590-\u08ff\u200e\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufefc]/;

/** A name that leaves the direction of the text around it as it is. */
function isolated(name) {
  return TURNS_LINE.test(name) ? "\u2068" + name + "\u2069" : name;
}

/** Makes a book ready: plain columns, names that fit into a line, and for each slot the option that leaves it empty. */
function prepare(book) {
  for (const bag of book.golfers) {
    bag.name = isolated(bag.name);
    for (const slot of bag.slots) {
      readColumns(slot);
      for (const club of slot.clubs) {
        club.name = isolated(club.name);
      }
      slot.empty = (slot.columns.club || []).indexOf(-1);
    }
  }
  return book;
}

class Choices {
  constructor(book) {
    this.book = book;
    this.golfer = 0;
    this.chosen = book.golfers.map(bag => bag.plan.slice());
    this.ticks = book.golfers.map(() => new Set());
    this.before = [];
    this.follow = () => {};
    this.merging = "";
  }

  get bag() {
    return this.book.golfers[this.golfer];
  }

  get yours() {
    return this.chosen[this.golfer];
  }

  get canUndo() {
    return this.before.length > 0;
  }

  /** Keeps what is now for undo. Moves of one drag share a name and are undone together. */
  keep(name) {
    if (name && name === this.merging) {
      return;
    }
    this.merging = name || "";
    this.before.push({
      golfer: this.golfer,
      chosen: this.chosen.map(each => each.slice()),
      ticks: this.ticks.map(each => new Set(each)),
    });
    this.before.splice(0, this.before.length - MOST_UNDO);
  }

  /** The end of a drag. */
  endMerge() {
    this.merging = "";
  }

  choose(slot, option, name) {
    if (this.yours[slot] !== option) {
      this.keep(name);
      this.yours[slot] = option;
      this.ticks[this.golfer].delete(slot);
      this.changed();
    }
  }

  chooseAll(chosen, name) {
    if (chosen.some((option, slot) => option !== this.yours[slot])) {
      this.keep(name);
      chosen.forEach((option, slot) => {
        if (option !== this.yours[slot]) {
          this.yours[slot] = option;
          this.ticks[this.golfer].delete(slot);
        }
      });
      this.changed();
    }
  }

  tick(slot, done) {
    this.keep();
    this.ticks[this.golfer][done ? "add" : "delete"](slot);
    this.changed();
  }

  pick(golfer) {
    this.golfer = golfer;
    this.changed();
  }

  undo() {
    if (this.canUndo) {
      this.endMerge();
      Object.assign(this, this.before.pop());
      this.changed();
    }
  }

  changed() {
    history.replaceState(null, "", this.address());
    this.follow();
  }

  /** What differs from the plan, such as #b=1f2e&g=1&c1=0.4.a&t1=0.2. */
  address() {
    const parts = ["b=" + this.book.digest];
    if (this.golfer > 0) {
      parts.push("g=" + this.golfer);
    }
    this.book.golfers.forEach((bag, index) => {
      if (this.chosen[index].some((option, slot) => option !== bag.plan[slot])) {
        parts.push("c" + index + "=" + this.chosen[index].map(option => option.toString(36)).join("."));
      }
      if (this.ticks[index].size > 0) {
        parts.push("t" + index + "=" + [...this.ticks[index]].sort((a, b) => a - b).join("."));
      }
    });
    return parts.length === 1 ? "#" : "#" + parts.join("&");
  }

  /** Takes what an address says. Gives a sentence where that is about another book or no set-up of this one. */
  read(address) {
    const said = new Map(address.replace(/^#/, "").split("&").map(part => part.split("=")));
    this.golfer = 0;
    this.chosen = this.book.golfers.map(bag => bag.plan.slice());
    this.ticks = this.book.golfers.map(() => new Set());
    if (!said.has("b")) {
      return "";
    }
    if (said.get("b") !== this.book.digest) {
      return "The address has a set-up of another book, or of this book at another time. The plan is shown.";
    }
    let whole = true;
    this.book.golfers.forEach((bag, index) => {
      whole = this.readBag(bag, index, said) && whole;
    });
    const golfer = Number(said.get("g") || 0);
    this.golfer = this.book.golfers[golfer] ? golfer : 0;
    return whole ? "" : "A part of the set-up in the address could not be read. The plan is shown for it.";
  }

  readBag(bag, index, said) {
    const slots = bag.slots.length;
    for (const slot of (said.get("t" + index) || "").split(".").filter(text => text !== "")) {
      if (Number(slot) >= 0 && Number(slot) < slots) {
        this.ticks[index].add(Number(slot));
      }
    }
    if (!said.has("c" + index)) {
      return true;
    }
    const options = said.get("c" + index).split(".").map(text => parseInt(text, 36));
    const fits = options.length === slots
      && options.every((option, slot) => option >= 0 && option < bag.slots[slot].count);
    if (fits) {
      this.chosen[index] = options;
    }
    return fits;
  }
}
