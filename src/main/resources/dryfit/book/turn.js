"use strict";
// Turns the chair with the finger. Everything is drawn here, point by point, into a plain canvas:
// no library, no graphics card, no network.
(function () {
  var holder = document.getElementById("turn");
  var canvas = holder.querySelector("canvas");
  var said = holder.querySelector("output");
  var data = JSON.parse(document.getElementById("solids").textContent);

  function bytes(text) {
    var raw = atob(text);
    var out = new Uint8Array(raw.length);
    for (var i = 0; i < raw.length; i++) out[i] = raw.charCodeAt(i);
    return out.buffer;
  }

  // Places are in tenths of a millimetre.
  var parts = data.parts.map(function (p) {
    var v = Float32Array.from(new Int16Array(bytes(p.points)), function (x) { return x / 10; });
    var t = p.wide ? new Uint32Array(bytes(p.triangles)) : new Uint16Array(bytes(p.triangles));
    var e = p.wide ? new Uint32Array(bytes(p.lines)) : new Uint16Array(bytes(p.lines));
    var n = new Float32Array(t.length);
    for (var i = 0; i < t.length; i += 3) {
      var a = 3 * t[i], b = 3 * t[i + 1], c = 3 * t[i + 2];
      var ux = v[b] - v[a], uy = v[b + 1] - v[a + 1], uz = v[b + 2] - v[a + 2];
      var wx = v[c] - v[a], wy = v[c + 1] - v[a + 1], wz = v[c + 2] - v[a + 2];
      var x = uy * wz - uz * wy, y = uz * wx - ux * wz, z = ux * wy - uy * wx;
      var l = Math.hypot(x, y, z) || 1;
      n[i] = x / l; n[i + 1] = y / l; n[i + 2] = z / l;
    }
    return { name: p.name, colour: p.colour, v: v, t: t, e: e, n: n, s: new Float32Array(v.length) };
  });

  var middle = [0, 0, 0], radius = 1;
  (function () {
    var low = [1e9, 1e9, 1e9], high = [-1e9, -1e9, -1e9];
    parts.forEach(function (p) {
      for (var i = 0; i < p.v.length; i++) {
        low[i % 3] = Math.min(low[i % 3], p.v[i]);
        high[i % 3] = Math.max(high[i % 3], p.v[i]);
      }
    });
    for (var k = 0; k < 3; k++) middle[k] = (low[k] + high[k]) / 2;
    radius = Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]) / 2;
  })();

  // From where: round the chair, up and down, and how near.
  var views = {
    "three-quarter": [0.48, 0.36], front: [0, 0.05], side: [Math.PI / 2, 0.05],
    back: [Math.PI, 0.05], above: [0, Math.PI / 2], underside: [0, -Math.PI / 2]
  };
  var round = 0.48, up = 0.36, near = 1, shiftX = 0, shiftY = 0, chosen = -1, wanted = false;
  var context = canvas.getContext("2d");
  var image = null, pixels = null, depth = null, who = null, share = 1;
  var dark = window.matchMedia("(prefers-color-scheme: dark)");

  function size() {
    var sharp = Math.min(window.devicePixelRatio || 1, 2) * share;
    var w = Math.max(1, Math.round(canvas.clientWidth * sharp));
    var h = Math.max(1, Math.round(canvas.clientHeight * sharp));
    if (!image || image.width !== w || image.height !== h) {
      canvas.width = w; canvas.height = h;
      image = context.createImageData(w, h);
      pixels = new Uint32Array(image.data.buffer);
      depth = new Float32Array(w * h);
      who = new Int16Array(w * h);
    }
  }

  function draw() {
    wanted = false;
    size();
    var start = performance.now();
    var w = image.width, h = image.height;
    var paper = dark.matches ? 0xff1b1e22 : 0xfff8fdff;
    var ink = dark.matches ? 0xff0c0e12 : 0xff1e2a3c;
    pixels.fill(paper); depth.fill(0); who.fill(-1);
    var cr = Math.cos(round), sr = Math.sin(round), cu = Math.cos(up), su = Math.sin(up);
    // The three directions of the picture in the chair's own space.
    var rx = cr, ry = sr;
    var fx = sr * cu, fy = -cr * cu, fz = su;
    var ux = -sr * su, uy = cr * su, uz = cu;
    var away = radius * 4.2, scale = near * 1.1 * Math.min(w, h) / 2 / radius * away;
    parts.forEach(function (p) {
      var v = p.v, s = p.s;
      for (var i = 0; i < v.length; i += 3) {
        var x = v[i] - middle[0], y = v[i + 1] - middle[1], z = v[i + 2] - middle[2];
        var d = 1 / (away - (x * fx + y * fy + z * fz));
        s[i] = w / 2 + shiftX * w + scale * d * (x * rx + y * ry);
        s[i + 1] = h / 2 + shiftY * h - scale * d * (x * ux + y * uy + z * uz);
        s[i + 2] = d;
      }
    });
    parts.forEach(function (p, index) {
      var red = p.colour[0], green = p.colour[1], blue = p.colour[2];
      if (index === chosen) { red = 0.55 * red + 85; green *= 0.55; blue *= 0.5; }
      for (var i = 0; i < p.t.length; i += 3) {
        var nx = p.n[i], ny = p.n[i + 1], nz = p.n[i + 2];
        var side = nx * rx + ny * ry, high = nx * ux + ny * uy + nz * uz, to = nx * fx + ny * fy + nz * fz;
        var light = 0.5 + 0.3 * Math.max(0, to) + 0.22 * Math.max(0, 0.75 * high - 0.5 * side) + 0.06 * nz;
        light = Math.min(1, light);
        fill(p.s, 3 * p.t[i], 3 * p.t[i + 1], 3 * p.t[i + 2], index,
          0xff000000 | (blue * light & 255) << 16 | (green * light & 255) << 8 | (red * light & 255), w, h);
      }
    });
    parts.forEach(function (p) {
      for (var i = 0; i < p.e.length; i += 2) line(p.s, 3 * p.e[i], 3 * p.e[i + 1], ink, w, h);
    });
    context.putImageData(image, 0, 0);
    return performance.now() - start;
  }

  function fill(s, a, b, c, index, colour, w, h) {
    var ax = s[a], ay = s[a + 1], bx = s[b], by = s[b + 1], cx = s[c], cy = s[c + 1];
    var area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
    if (!(area < 0)) return;
    var az = s[a + 2], bz = s[b + 2], cz = s[c + 2];
    var gx = ((bz - az) * (cy - ay) - (cz - az) * (by - ay)) / area;
    var gy = ((cz - az) * (bx - ax) - (bz - az) * (cx - ax)) / area;
    var y0 = Math.max(0, Math.ceil(Math.min(ay, by, cy) - 0.5));
    var y1 = Math.min(h - 1, Math.floor(Math.max(ay, by, cy) - 0.5));
    for (var y = y0; y <= y1; y++) {
      var py = y + 0.5, left = 1e9, right = -1e9, x;
      if (ay <= py !== by <= py) { x = ax + (bx - ax) * (py - ay) / (by - ay); left = Math.min(left, x); right = Math.max(right, x); }
      if (by <= py !== cy <= py) { x = bx + (cx - bx) * (py - by) / (cy - by); left = Math.min(left, x); right = Math.max(right, x); }
      if (cy <= py !== ay <= py) { x = cx + (ax - cx) * (py - cy) / (ay - cy); left = Math.min(left, x); right = Math.max(right, x); }
      var x0 = Math.max(0, Math.ceil(left - 0.5)), x1 = Math.min(w - 1, Math.ceil(right - 0.5) - 1);
      var z = az + gx * (x0 + 0.5 - ax) + gy * (py - ay), at = y * w + x0;
      for (x = x0; x <= x1; x++, at++, z += gx) {
        if (z > depth[at]) { depth[at] = z; pixels[at] = colour; who[at] = index; }
      }
    }
  }

  function line(s, a, b, colour, w, h) {
    var x = s[a], y = s[a + 1], z = s[a + 2], dx = s[b] - x, dy = s[b + 1] - y, dz = s[b + 2] - z;
    var steps = Math.min(4000, Math.max(1, Math.ceil(Math.max(Math.abs(dx), Math.abs(dy)))));
    for (var i = 0; i <= steps; i++) {
      var px = Math.floor(x + dx * i / steps), py = Math.floor(y + dy * i / steps);
      if (px >= 0 && py >= 0 && px < w && py < h) {
        var at = py * w + px;
        if ((z + dz * i / steps) * 1.0006 > depth[at]) pixels[at] = colour;
      }
    }
  }

  function soon() {
    if (wanted) return;
    wanted = true;
    requestAnimationFrame(function () {
      // A slow telephone turns a coarser chair, and sees it sharp when the finger rests.
      if (draw() > 45 && share === 1 && fingers.size > 0) share = 0.5;
    });
  }

  var fingers = new Map(), moved = 0, gap = 0;

  function spread() {
    var p = Array.from(fingers.values());
    return Math.hypot(p[0].x - p[1].x, p[0].y - p[1].y);
  }

  canvas.addEventListener("pointerdown", function (e) {
    canvas.setPointerCapture(e.pointerId);
    fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
    if (fingers.size === 1) moved = 0;
    if (fingers.size === 2) gap = spread();
  });
  canvas.addEventListener("pointermove", function (e) {
    var f = fingers.get(e.pointerId);
    if (!f) return;
    var dx = e.clientX - f.x, dy = e.clientY - f.y;
    f.x = e.clientX; f.y = e.clientY;
    moved += Math.abs(dx) + Math.abs(dy);
    if (fingers.size === 1) {
      round -= dx * 0.009;
      up = Math.max(-Math.PI / 2, Math.min(Math.PI / 2, up + dy * 0.009));
    } else if (fingers.size === 2) {
      var now = spread();
      near = Math.max(0.5, Math.min(12, near * now / (gap || now)));
      gap = now;
      shiftX += dx / 2 / canvas.clientWidth;
      shiftY += dy / 2 / canvas.clientHeight;
    }
    soon();
  });
  function lifted(e) {
    if (!fingers.delete(e.pointerId)) return;
    if (e.type === "pointerup" && moved < 8 && fingers.size === 0) tap(e);
    if (fingers.size === 0 && share !== 1) { share = 1; }
    moved = fingers.size ? 99 : moved;
    soon();
  }
  canvas.addEventListener("pointerup", lifted);
  canvas.addEventListener("pointercancel", lifted);
  canvas.addEventListener("wheel", function (e) {
    e.preventDefault();
    near = Math.max(0.5, Math.min(12, near * Math.exp(-e.deltaY * 0.0015)));
    soon();
  }, { passive: false });
  canvas.addEventListener("keydown", function (e) {
    var turn = { ArrowLeft: [0.12, 0], ArrowRight: [-0.12, 0], ArrowUp: [0, 0.12], ArrowDown: [0, -0.12] }[e.key];
    if (!turn) return;
    e.preventDefault();
    round += turn[0];
    up = Math.max(-Math.PI / 2, Math.min(Math.PI / 2, up + turn[1]));
    soon();
  });

  function tap(e) {
    var box = canvas.getBoundingClientRect();
    var x = Math.floor((e.clientX - box.left) * image.width / box.width);
    var y = Math.floor((e.clientY - box.top) * image.height / box.height);
    var found = -1;
    // A finger is wider than a spindle: the nearest part within reach counts.
    for (var reach = 0; found < 0 && reach < 14; reach++) {
      for (var k = 0; found < 0 && k < 16; k++) {
        var px = x + Math.round(reach * Math.cos(k * Math.PI / 8)), py = y + Math.round(reach * Math.sin(k * Math.PI / 8));
        if (px >= 0 && py >= 0 && px < image.width && py < image.height) found = who[py * image.width + px];
      }
    }
    chosen = found;
    said.textContent = found < 0 ? data.hint : parts[found].name;
  }

  holder.querySelectorAll("button").forEach(function (button) {
    button.addEventListener("click", function () {
      var view = views[button.value];
      round = view[0]; up = view[1]; near = 1; shiftX = 0; shiftY = 0;
      soon();
    });
  });
  dark.addEventListener("change", soon);
  new ResizeObserver(soon).observe(canvas);
  holder.hidden = false;
  document.getElementById("still").hidden = true;
  said.textContent = data.hint;
  soon();
})();
