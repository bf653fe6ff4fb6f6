/*
 * Correcting by hand. The page can be read without this script; with it, lines, origins and spots
 * can be moved on the straightened strip, corners on the photo, and what was said is saved as a
 * file for the program. Nothing leaves the page.
 */
(() => {
  const $ = (id) => document.getElementById(id);
  const SVG = "http://www.w3.org/2000/svg";
  const strip = JSON.parse($("strip-data").textContent);
  const A = arithmetic;
  const px = strip.pixelsPerMm;

  // ---- what is said so far -------------------------------------------------------------------

  const near = (a, b) => Math.hypot(a[0] - b[0], a[1] - b[1]) < 2;

  const lineState = (said, course) => {
    const at = (x) => ({ x, y: A.courseAt(course, x) });
    return { said: said || null, from: at(strip.width * 0.03), to: at(strip.width * 0.97) };
  };

  const first = () => {
    const said = strip.settings;
    const words = said.spots || [];
    const spotState = (lane, spot, index) => {
      const photo = A.toPhoto(strip, spot.x, spot.y);
      const byHand = spot.flags.includes("by-hand");
      const word = byHand && words.find((w) => w[0] !== "remove" && w[1] === lane.name && near(w.slice(-2), photo));
      return {
        ...spot,
        id: lane.name + "/" + index,
        hand: byHand,
        word: word || null,
        found: !byHand ? photo : word && word[0] === "move" ? [word[2], word[3]] : null,
      };
    };
    return {
      corners: strip.cornersPx,
      cornersSaid: said.corners || null,
      bottom: said.bottom || "",
      baseline: lineState(said.baseline, strip.baseline),
      front: lineState(said.front, strip.front),
      lanes: strip.lanes.map((lane, i) => ({
        id: "lane" + i,
        name: lane.name,
        unknown: lane.role === "unknown",
        originX: lane.originX,
        origin: (said.origin || []).find((o) => o[0] === lane.name)?.slice(1) || null,
        baselineU: lane.baselineU,
        frontU: lane.frontU,
        spots: lane.spots.map((spot, k) => spotState(lane, spot, k)),
      })),
      removed: words.filter((w) => w[0] === "remove").map((w) => [w[1], w[2]]),
      recounted: false,
      lanesTouched: false,
    };
  };

  let state = first();
  const start = JSON.stringify(state);
  let saved = start;
  let back = [];
  let forth = [];
  let selected = "";
  let adding = "";

  const remember = () => {
    back.push(JSON.stringify(state));
    forth = [];
  };

  const changed = () => JSON.stringify(state) !== start;

  // ---- measuring -----------------------------------------------------------------------------

  const course = (line, found) =>
    line.moved
      ? A.handCourse(line.from, line.to, strip.width, strip.hand.line)
      : found;

  const now = () => ({
    ...strip,
    baseline: course(state.baseline, strip.baseline),
    front: course(state.front, strip.front),
  });

  const measured = () => {
    const at = now();
    return state.lanes.map((lane) => ({ lane, ...A.measureLane(at, lane) }));
  };

  // ---- what is saved -------------------------------------------------------------------------

  const tidy = (value) => Math.round(value * 100) / 100;
  const place = (x, y) => A.toPhoto(strip, x, y).map(tidy);

  /** Which side of the picture the baseline's end looks to: new corners must not turn the strip. */
  const direction = ([topLeft, topRight, bottomRight, bottomLeft]) => {
    const dx = bottomRight[0] + bottomLeft[0] - topRight[0] - topLeft[0];
    const dy = bottomRight[1] + bottomLeft[1] - topRight[1] - topLeft[1];
    return Math.abs(dx) > Math.abs(dy) ? (dx > 0 ? "right" : "left") : dy > 0 ? "down" : "up";
  };

  const settings = () => {
    const said = { ...strip.settings };
    const names = state.lanes.map((lane) => lane.name);
    const unknown = state.lanes.filter((lane) => lane.unknown).map((lane) => lane.name).sort();
    const words = [];
    for (const lane of state.lanes) {
      for (const spot of lane.spots) {
        if (spot.hand) {
          const to = spot.word ? spot.word.slice(-2) : place(spot.x, spot.y);
          words.push(spot.found
            ? ["move", lane.name, ...spot.found.map(tidy), ...to]
            : ["add", lane.name, ...to]);
        }
      }
    }
    state.removed.forEach((at) => words.push(["remove", ...at.map(tidy)]));
    const line = now().baseline;
    const origins = state.lanes
      .filter((lane) => lane.origin || lane.moved || state.recounted)
      .map((lane) => [lane.name,
        ...(lane.origin && !lane.moved
          ? lane.origin
          : place(lane.originX, A.courseAt(line, lane.originX)))]);
    const put = (name, value) => {
      if (value && value.length) {
        said[name] = value;
      } else {
        delete said[name];
      }
    };
    if (said.lanes || state.lanesTouched || state.recounted || origins.length || words.length) {
      put("lanes", names);
      delete said.laneCount;
    }
    put("unknown", unknown);
    put("origin", origins);
    put("spots", words);
    put("corners", state.cornersSaid);
    put("bottom", state.bottom || (state.cornersSaid ? direction(state.corners) : ""));
    for (const name of ["baseline", "front"]) {
      const { said: kept, moved, from, to } = state[name];
      put(name, moved ? [...place(from.x, from.y), ...place(to.x, to.y)] : kept);
    }
    return said;
  };

  const file = () => JSON.stringify({
    format: "wickmark-corrections/1",
    photo: { file: strip.photo.file, sha256: strip.photo.sha256 },
    strip: { number: strip.number, of: strip.of, cornersPx: strip.cornersPx },
    settings: settings(),
  }, null, 1) + "\n";

  // ---- drawing -------------------------------------------------------------------------------

  const element = (name, attributes, ...children) => {
    const made = document.createElementNS(SVG, name);
    Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
    made.append(...children);
    return made;
  };

  const html = (name, attributes, ...children) => {
    const made = document.createElement(name);
    Object.entries(attributes).forEach(([key, value]) => {
      if (key in made && typeof value === "boolean") {
        made[key] = value;
      } else {
        made.setAttribute(key, value);
      }
    });
    made.append(...children);
    return made;
  };

  const canvas = $("edit-strip");
  const photo = $("edit-photo");

  /** Pixels of the drawing in one pixel of the screen. */
  const zoom = (svg) => svg.viewBox.baseVal.width / (svg.getBoundingClientRect().width || 1);

  const handle = (svg, key, x, y, label, kind) => {
    const unit = zoom(svg);
    const group = element("g", {
      class: "handle " + kind + (selected === key ? " chosen" : ""),
      tabindex: "0",
      role: "button",
      "aria-pressed": String(selected === key),
      "aria-label": label,
      "data-key": key,
      transform: "translate(" + x + " " + y + ")",
    });
    group.append(element("circle", { class: "hit", r: 14 * unit }));
    const d = 7 * unit;
    if (kind === "spot") {
      group.append(element("circle", { class: "ring", r: d }),
        element("path", { class: "cross", d: `M${-d} 0H${d}M0 ${-d}V${d}` }));
    } else if (kind === "origin") {
      group.append(element("path", { class: "ring", d: `M0 0L${d} ${1.6 * d}H${-d}Z` }));
    } else {
      group.append(element("rect",
        { class: "ring", x: -d, y: -d * 0.7, width: 2 * d, height: 1.4 * d }));
    }
    return group;
  };

  const label = (svg, x, y, words, anchor = "start") => {
    const size = 13 * zoom(svg);
    const made = element("text",
      { x, y, "font-size": size, "text-anchor": anchor, "stroke-width": size / 4 });
    made.textContent = words;
    return made;
  };

  const polyline = (svg, kind, line) => {
    const points = [];
    for (let i = 0; i <= 24; i++) {
      const x = (strip.width * i) / 24;
      points.push(x.toFixed(1) + "," + A.courseAt(line, x).toFixed(1));
    }
    const unit = zoom(svg);
    const drawn = { points: points.join(" "), fill: "none" };
    return [element("polyline", { ...drawn, class: "halo", "stroke-width": 5 * unit }),
      element("polyline", { ...drawn, class: kind, "stroke-width": 2 * unit })];
  };

  const values = (lane, one) =>
    (strip.millimetres ? A.withUncertainty(one.distance, one.distanceU) + " mm, " : "")
      + "Rf " + A.rfText(one.rf, one.rfU);

  const spotName = (rows, lane, spot) => {
    const row = rows.find((r) => r.lane === lane);
    const k = row.spots.findIndex((s) => s.spot === spot);
    return k < 0
      ? lane.name + ", beyond the lines, left out"
      : lane.name + ", spot " + (k + 1) + ", " + values(lane, row.spots[k]);
  };

  const MOVES = ". Arrow keys move it.";

  const drawStrip = (rows) => {
    const at = now();
    const marks = $("edit-marks");
    const focused = document.activeElement?.dataset?.key;
    marks.replaceChildren(...polyline(canvas, "baseline", at.baseline),
      ...polyline(canvas, "front", at.front));
    for (const lane of state.lanes) {
      const y = A.courseAt(at.baseline, lane.originX);
      const slope = A.slopeOf(at.baseline);
      const top = A.courseAt(at.front, lane.originX);
      marks.append(element("line", { class: "lane", x1: lane.originX, y1: y,
        x2: lane.originX + (y - top) * slope, y2: top, "stroke-width": 1.2 * zoom(canvas) }));
      marks.append(label(canvas, lane.originX, y + 36 * zoom(canvas), lane.name, "middle"));
    }
    for (const [name, line] of [["baseline", at.baseline], ["front", at.front]]) {
      for (const end of ["from", "to"]) {
        const x = state[name][end].x;
        marks.append(handle(canvas, name + "." + end, x, A.courseAt(line, x),
          (name === "front" ? "Front, " : "Baseline, ") + (end === "from" ? "left" : "right")
            + " end" + MOVES, "line"));
      }
    }
    for (const lane of state.lanes) {
      marks.append(handle(canvas, lane.id, lane.originX, A.courseAt(at.baseline, lane.originX),
        "Origin of " + lane.name + MOVES, "origin"));
      const row = rows.find((r) => r.lane === lane);
      for (const spot of lane.spots) {
        const k = row.spots.findIndex((s) => s.spot === spot);
        marks.append(handle(canvas, spot.id, spot.x, spot.y,
          spotName(rows, lane, spot) + MOVES, "spot"));
        marks.append(label(canvas, spot.x + 16 * zoom(canvas), spot.y + 4 * zoom(canvas),
          k < 0 ? "left out" : k + 1 + (spot.hand ? " by hand" : "")));
      }
    }
    if (focused) {
      marks.querySelector('[data-key="' + CSS.escape(focused) + '"]')?.focus();
    }
  };

  const drawPhoto = () => {
    const marks = $("edit-corners");
    const focused = document.activeElement?.dataset?.key;
    const names = ["top left", "top right", "bottom right", "bottom left"];
    const points = state.corners.map((c) => c.join(",")).join(" ");
    const unit = zoom(photo);
    marks.replaceChildren(
      element("polygon", { points, class: "halo", fill: "none", "stroke-width": 5 * unit }),
      element("polygon", { points, class: "edge", fill: "none", "stroke-width": 2 * unit }),
      ...state.corners.map(([x, y], i) =>
        handle(photo, "corner." + i, x, y, "Corner, " + names[i] + " of the strip" + MOVES, "line")));
    if (focused) {
      marks.querySelector('[data-key="' + CSS.escape(focused) + '"]')?.focus();
    }
  };

  const cell = (words, kind = "") => html("td", kind ? { class: kind } : {}, words);

  const drawTable = (rows) => {
    const body = $("edit-table");
    body.replaceChildren();
    for (const { lane, front, frontU, spots } of rows) {
      const frontText =
        front === null ? "–" : strip.millimetres ? A.withUncertainty(front, frontU) : "–";
      const heading = html("th", { scope: "rowgroup", rowspan: String(Math.max(1, spots.length)) },
        lane.name, html("span", { class: "role" }, lane.unknown ? "unknown" : "reference"));
      const lines = spots.length ? spots : [null];
      lines.forEach((one, i) => {
        const row = html("tr", {});
        if (i === 0) {
          row.append(heading);
        }
        if (one) {
          row.append(cell(String(i + 1), "n"), cell(one.spot.colour), cell(frontText, "n"),
            cell(strip.millimetres ? A.withUncertainty(one.distance, one.distanceU) : "–", "n"),
            cell(A.rfText(one.rf, one.rfU), "n rf"), cell(one.spot.hand ? "by hand" : ""));
        } else {
          row.append(html("td", { colspan: "2" }, "no spot"), cell(frontText, "n"),
            cell("–", "n"), cell("–", "n"), cell(front === null ? "the front is not above the baseline" : ""));
        }
        body.append(row);
      });
    }
  };

  const drawLanes = () => {
    const body = $("edit-lanes");
    const focused = document.activeElement?.id;
    body.replaceChildren(...state.lanes.map((lane, i) => {
      const where = "lane " + (i + 1) + " from the left";
      const name = html("input", { type: "text", id: "name-" + lane.id, value: lane.name,
        maxlength: "60", "aria-label": "Name of " + where });
      name.addEventListener("change", () => rename(lane.id, name));
      const unknown = html("input", { type: "checkbox", id: "unknown-" + lane.id,
        "aria-label": lane.name + " is unknown", checked: lane.unknown });
      unknown.addEventListener("change", () => {
        remember();
        const changedLane = state.lanes.find((l) => l.id === lane.id);
        changedLane.unknown = unknown.checked;
        state.lanesTouched = true;
        draw();
      });
      const remove = html("button", { type: "button", id: "remove-" + lane.id,
        "aria-label": "Remove lane " + lane.name }, "Remove");
      remove.addEventListener("click", () => removeLane(lane.id));
      return html("tr", {}, html("td", {}, name),
        html("td", {}, html("label", { class: "tap" }, unknown, " unknown")),
        html("td", {}, remove));
    }));
    if (focused) {
      $(focused)?.focus();
    }
  };

  const draw = (lanesToo = true) => {
    const rows = measured();
    drawStrip(rows);
    drawPhoto();
    drawTable(rows);
    if (lanesToo) {
      drawLanes();
    }
    const moved = JSON.stringify(state.corners) !== JSON.stringify(strip.cornersPx)
      || state.bottom !== (strip.settings.bottom || "");
    $("edit-stale").hidden = !moved;
    $("edit-recounted").hidden = !state.recounted;
    $("edit-undo").disabled = back.length === 0;
    $("edit-redo").disabled = forth.length === 0;
    $("edit-reset").disabled = !changed();
    $("edit-bottom").value = state.bottom;
    const [kind] = locate(selected);
    $("edit-remove").disabled = kind !== "spot" && kind !== "lane";
    for (const id of ["up", "down", "left", "right"]) {
      $("edit-" + id).disabled = !kind;
    }
    $("edit-chosen").textContent = kind ? described(rows) : "nothing";
    $("edit-add-spot").setAttribute("aria-pressed", String(adding === "spot"));
    $("edit-add-lane").setAttribute("aria-pressed", String(adding === "lane"));
    $("edit-tap").hidden = !adding;
    canvas.classList.toggle("adding", Boolean(adding));
    $("edit-file").textContent = file();
  };

  const described = (rows) => {
    const [kind, thing, lane] = locate(selected);
    if (kind === "spot") {
      return spotName(rows, lane, thing);
    }
    if (kind === "lane") {
      return "origin of " + thing.name;
    }
    return kind === "corner" ? "a corner" : selected.startsWith("front") ? "front" : "baseline";
  };

  let speaking = 0;
  const say = (words) => {
    clearTimeout(speaking);
    speaking = setTimeout(() => {
      $("edit-said").textContent = words;
    }, 250);
  };

  // ---- changing ------------------------------------------------------------------------------

  const locate = (key) => {
    if (key.startsWith("corner.")) {
      return ["corner", Number(key.slice(7))];
    }
    if (key.startsWith("baseline.") || key.startsWith("front.")) {
      const [name, end] = key.split(".");
      return ["line", state[name], end, name];
    }
    for (const lane of state.lanes) {
      if (lane.id === key) {
        return ["lane", lane];
      }
      const spot = lane.spots.find((s) => s.id === key);
      if (spot) {
        return ["spot", spot, lane];
      }
    }
    return [""];
  };

  const within = (value, low, high) => Math.max(low, Math.min(high, value));

  /** Puts what is chosen at a place: of the straightened strip, or of the photo for a corner. */
  const put = (key, x, y) => {
    const [kind, thing, end] = locate(key);
    if (kind === "corner") {
      state.corners = state.corners.map((c, i) =>
        i === thing
          ? [tidy(within(x, 0, strip.photo.widthPx)), tidy(within(y, 0, strip.photo.heightPx))]
          : c);
      state.cornersSaid = state.corners;
    } else if (kind === "line") {
      if (!thing.moved) {
        const found = key.startsWith("front") ? strip.front : strip.baseline;
        for (const e of ["from", "to"]) {
          thing[e].y = A.courseAt(found, thing[e].x);
        }
      }
      const gap = strip.width / 5;
      thing[end].x = end === "from"
        ? within(x, 0, thing.to.x - gap)
        : within(x, thing.from.x + gap, strip.width);
      thing[end].y = within(y, 0, strip.height);
      thing.moved = true;
    } else if (kind === "lane") {
      const i = state.lanes.indexOf(thing);
      const low = i ? state.lanes[i - 1].originX + px : 0;
      const high = i < state.lanes.length - 1 ? state.lanes[i + 1].originX - px : strip.width;
      thing.originX = within(x, Math.min(low, high), Math.max(low, high));
      thing.moved = true;
      state.lanesTouched = true;
    } else if (kind === "spot") {
      thing.x = within(x, 0, strip.width);
      thing.y = within(y, 0, strip.height);
      thing.hand = true;
      thing.word = null;
      thing.u = 0;
    }
  };

  const position = (key) => {
    const [kind, thing, end, name] = locate(key);
    switch (kind) {
      case "corner":
        return { x: state.corners[thing][0], y: state.corners[thing][1] };
      case "line":
        return { x: thing[end].x, y: A.courseAt(now()[name], thing[end].x) };
      case "lane":
        return { x: thing.originX, y: 0 };
      default:
        return thing;
    }
  };

  const nudge = (dx, dy, large) => {
    const [kind] = locate(selected);
    if (!kind) {
      return;
    }
    const step = kind === "corner"
      ? (large ? 10 : 1)
      : (large ? 1 : 0.1) * px;
    const at = position(selected);
    remember();
    put(selected, at.x + dx * step, at.y + dy * step);
    draw();
    say($("edit-chosen").textContent);
  };

  const choose = (key) => {
    selected = key;
    for (const group of document.querySelectorAll(".handle")) {
      const chosen = group.dataset.key === key;
      group.classList.toggle("chosen", chosen);
      group.setAttribute("aria-pressed", String(chosen));
    }
  };

  const freeName = () => {
    for (let i = 1; ; i++) {
      if (state.lanes.every((lane) => lane.name !== String(i))) {
        return String(i);
      }
    }
  };

  let made = 0;
  const addSpot = (x, y) => {
    if (!state.lanes.length) {
      say("There is no lane to put a spot into. Add a lane first.");
      return;
    }
    remember();
    const lane = state.lanes.reduce((a, b) =>
      Math.abs(b.originX - x) < Math.abs(a.originX - x) ? b : a);
    const spot = { id: "new" + ++made, x, y, top: y, bottom: y, densestX: x, densestY: y, u: 0,
      uMiddle: 0, uDensest: 0, colour: "measured later", flags: [], hand: true, word: null,
      found: null };
    lane.spots.push(spot);
    selected = spot.id;
    finishAdding();
  };

  const addLane = (x) => {
    remember();
    const like = state.lanes.reduce((a, b) =>
      !a || Math.abs(b.originX - x) < Math.abs(a.originX - x) ? b : a, null) || strip.lanes[0];
    const lane = { id: "newlane" + ++made, name: freeName(), unknown: false, originX: x,
      origin: null, moved: true, baselineU: like.baselineU, frontU: like.frontU, spots: [] };
    state.lanes.push(lane);
    state.lanes.sort((a, b) => a.originX - b.originX);
    state.recounted = true;
    selected = lane.id;
    finishAdding();
  };

  const finishAdding = () => {
    adding = "";
    draw();
    document.querySelector('[data-key="' + CSS.escape(selected) + '"]')?.focus();
    say("Added: " + $("edit-chosen").textContent);
  };

  const removeLane = (id) => {
    const lane = state.lanes.find((l) => l.id === id);
    if (state.lanes.length === 1) {
      say("A strip has at least one lane.");
      return;
    }
    remember();
    // Its spots are not said to be none: two lanes taken for one stain are a common mistake.
    state.lanes = state.lanes.filter((l) => l !== lane);
    state.recounted = true;
    selected = "";
    draw();
    say("Lane " + lane.name + " removed.");
    $("edit-undo").focus();
  };

  const removeChosen = () => {
    const [kind, thing, lane] = locate(selected);
    if (kind === "lane") {
      removeLane(thing.id);
    } else if (kind === "spot") {
      const name = spotName(measured(), lane, thing);
      remember();
      if (thing.found) {
        state.removed.push(thing.found);
      }
      lane.spots = lane.spots.filter((s) => s !== thing);
      selected = "";
      draw();
      say("Removed: " + name);
      canvas.focus();
    }
  };

  const rename = (id, input) => {
    const lane = state.lanes.find((l) => l.id === id);
    const name = input.value.trim();
    const taken = state.lanes.some((l) => l !== lane && l.name === name);
    input.setCustomValidity(!name ? "A lane needs a name." : taken
      ? "Another lane has this name." : "");
    if (!input.reportValidity()) {
      say(input.validationMessage);
      return;
    }
    if (name !== lane.name) {
      remember();
      lane.name = name;
      state.lanesTouched = true;
      // The row stays: a click that ended the typing may be on its way to a button in it.
      draw(false);
      $("remove-" + id).setAttribute("aria-label", "Remove lane " + name);
      $("unknown-" + id).setAttribute("aria-label", name + " is unknown");
    }
  };

  const step = (from, to) => {
    if (from.length) {
      to.push(JSON.stringify(state));
      state = JSON.parse(from.pop());
      if (!locate(selected)[0]) {
        selected = "";
      }
      draw();
    }
  };
  const undo = () => {
    step(back, forth);
    say("Undone.");
  };
  const redo = () => {
    step(forth, back);
    say("Done again.");
  };

  // ---- hands, keys, fingers ------------------------------------------------------------------

  const placeIn = (svg, event) => {
    const box = svg.getBoundingClientRect();
    const view = svg.viewBox.baseVal;
    return {
      x: ((event.clientX - box.left) / box.width) * view.width,
      y: ((event.clientY - box.top) / box.height) * view.height,
    };
  };

  const draggable = (svg) => {
    let drag = null;
    svg.addEventListener("pointerdown", (event) => {
      const at = placeIn(svg, event);
      if (adding && svg === canvas) {
        event.preventDefault();
        if (adding === "spot") {
          addSpot(at.x, at.y);
        } else {
          addLane(at.x);
        }
        return;
      }
      const group = event.target.closest(".handle");
      if (!group || event.button > 0) {
        return;
      }
      event.preventDefault();
      const key = group.dataset.key;
      const from = position(key);
      drag = { key, dx: from.x - at.x, dy: from.y - at.y, begun: false,
        x: event.clientX, y: event.clientY };
      choose(key);
      group.focus();
      svg.setPointerCapture(event.pointerId);
      draw();
    });
    svg.addEventListener("pointermove", (event) => {
      if (!drag) {
        return;
      }
      if (!drag.begun && Math.hypot(event.clientX - drag.x, event.clientY - drag.y) < 3) {
        return;
      }
      if (!drag.begun) {
        remember();
        drag.begun = true;
      }
      const at = placeIn(svg, event);
      put(drag.key, at.x + drag.dx, at.y + drag.dy);
      draw();
    });
    const end = () => {
      if (drag?.begun) {
        say($("edit-chosen").textContent);
      }
      drag = null;
    };
    svg.addEventListener("pointerup", end);
    svg.addEventListener("pointercancel", end);
    svg.addEventListener("focusin", (event) => {
      const key = event.target.dataset?.key;
      if (key && key !== selected) {
        selected = key;
        choose(key);
        draw();
      }
    });
    svg.addEventListener("keydown", (event) => {
      const moves = { ArrowUp: [0, -1], ArrowDown: [0, 1], ArrowLeft: [-1, 0], ArrowRight: [1, 0] };
      if (moves[event.key] && event.target.closest(".handle") && !event.ctrlKey && !event.altKey) {
        event.preventDefault();
        nudge(...moves[event.key], event.shiftKey);
      } else if (event.key === "Delete" || event.key === "Backspace") {
        event.preventDefault();
        removeChosen();
      }
    });
  };
  draggable(canvas);
  draggable(photo);

  document.addEventListener("keydown", (event) => {
    const key = event.key.toLowerCase();
    if ($("edit").hidden || event.target.matches?.("input[type=text]")) {
      return;
    }
    if ((event.ctrlKey || event.metaKey) && (key === "z" || key === "y")) {
      event.preventDefault();
      if (key === "y" || event.shiftKey) {
        redo();
      } else {
        undo();
      }
    } else if (key === "escape" && adding) {
      adding = "";
      draw();
    }
  });

  const add = (kind) => (event) => {
    const again = adding === kind;
    adding = again ? "" : kind;
    if (!again && event.detail === 0) {
      // By the keyboard there is no place to tap: it goes into the middle and is moved from there.
      const [, thing, lane] = locate(selected);
      const home = kind === "spot" ? (lane?.spots ? lane : thing?.spots ? thing : state.lanes[0]) : null;
      if (kind === "spot") {
        const at = now();
        const x = home.originX;
        addSpot(x, (A.courseAt(at.baseline, x) + A.courseAt(at.front, x)) / 2);
      } else {
        const edges = [0, ...state.lanes.map((l) => l.originX), strip.width];
        let widest = 0;
        for (let i = 1; i < edges.length; i++) {
          if (edges[i] - edges[i - 1] > edges[widest + 1] - edges[widest]) {
            widest = i - 1;
          }
        }
        addLane((edges[widest] + edges[widest + 1]) / 2);
      }
      return;
    }
    draw();
    say(adding ? "Tap the strip." : "");
  };

  const large = () => $("edit-step").value === "1";
  const wire = (id, act) => $(id).addEventListener("click", act);
  wire("edit-add-spot", add("spot"));
  wire("edit-add-lane", add("lane"));
  wire("edit-remove", removeChosen);
  wire("edit-undo", undo);
  wire("edit-redo", redo);
  wire("edit-up", () => nudge(0, -1, large()));
  wire("edit-down", () => nudge(0, 1, large()));
  wire("edit-left", () => nudge(-1, 0, large()));
  wire("edit-right", () => nudge(1, 0, large()));
  wire("edit-reset", () => {
    remember();
    state = JSON.parse(start);
    selected = "";
    draw();
    say("Everything is as it was measured.");
  });
  $("edit-bottom").addEventListener("change", () => {
    remember();
    state.bottom = $("edit-bottom").value;
    draw();
  });
  wire("edit-save", () => {
    const link = html("a", { download: "corrections.json",
      href: URL.createObjectURL(new Blob([file()], { type: "application/json" })) });
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    saved = JSON.stringify(state);
    say("Saved as corrections.json.");
  });
  window.addEventListener("beforeunload", (event) => {
    if (JSON.stringify(state) !== saved && changed()) {
      event.preventDefault();
    }
  });

  const open = () => {
    $("edit").hidden = false;
    $("correct-start").setAttribute("aria-expanded", "true");
    canvas.querySelector("image").setAttribute("href",
      document.querySelector(".straight image").getAttribute("href"));
    photo.querySelector("image").setAttribute("href",
      document.querySelector(".photo image").getAttribute("href"));
    draw();
    $("h-edit").focus();
  };
  wire("correct-start", () => {
    if ($("edit").hidden) {
      open();
    } else {
      $("edit").hidden = true;
      $("correct-start").setAttribute("aria-expanded", "false");
    }
  });
  wire("correct-link", (event) => {
    event.preventDefault();
    open();
  });
  $("edit-corner-part").addEventListener("toggle", () => draw());
  window.addEventListener("resize", () => $("edit").hidden || draw());
  $("correct").hidden = false;
  $("correct-hint").hidden = false;
})();
