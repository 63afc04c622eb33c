// Elements. Texts from the book become text and nothing else.

const SVG_NAMES = "http://www.w3.org/2000/svg";

function filled(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes || {})) {
    if (typeof value === "function") {
      node.addEventListener(name, value);
    } else if (value !== null && value !== undefined && value !== false) {
      node.setAttribute(name, value === true ? "" : value);
    }
  }
  node.append(...children.filter(child => child !== null));
  return node;
}

/** An element with attributes; a function is called on the event of that name. Children are elements or texts. */
function el(tag, attributes, ...children) {
  return filled(document.createElement(tag), attributes, children);
}

/** An element of a drawing. */
function svg(tag, attributes, ...children) {
  return filled(document.createElementNS(SVG_NAMES, tag), attributes, children);
}

/** A text in a drawing. */
function label(x, y, look, text) {
  return svg("text", { x, y, class: look }, text);
}

/** Writes a text only where it differs. */
function write(node, text) {
  if (node.textContent !== text) {
    node.textContent = text;
  }
}

/** A section with its heading. */
function section(name, heading, ...children) {
  const id = "h-" + name;
  return el("section", { class: "panel " + name, "aria-labelledby": id }, el("h2", { id }, heading), ...children);
}

/** A button. */
function button(look, text, action, more) {
  return el("button", { type: "button", class: look, click: action, ...more }, text);
}

/** Moves the focus among radio buttons: arrows to the neighbours, Home and End to the ends. */
function moveAmong(buttons, event, choose) {
  const steps = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };
  const at = buttons.indexOf(event.target.closest("[role=radio]"));
  if (at < 0) {
    return;
  }
  const last = buttons.length - 1;
  const next = event.key === "Home" ? 0 : event.key === "End" ? last
    : event.key in steps ? (at + steps[event.key] + buttons.length) % buttons.length : -1;
  if (next >= 0) {
    event.preventDefault();
    choose(next);
    buttons[next].focus();
  }
}
