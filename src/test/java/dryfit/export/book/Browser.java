package dryfit.export.book;

import static org.assertj.core.api.Assertions.fail;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A headless Chromium, driven by its DevTools protocol. Fails, telling what to install, without
 * one.
 */
final class Browser {
  private static final long PATIENCE = 120; // s

  private final JsonMapper json = JsonMapper.builder().build();
  private final Path profile;
  private final Process process;
  private final WebSocket socket;
  private final AtomicInteger next = new AtomicInteger();
  private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
  private final List<JsonNode> events = new CopyOnWriteArrayList<>();
  private final StringBuilder incoming = new StringBuilder();

  Browser() throws Exception {
    profile = Files.createTempDirectory("dryfit-browser");
    process =
        new ProcessBuilder(
                program().toString(),
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile,
                "about:blank")
            .redirectErrorStream(true)
            .redirectOutput(profile.resolve("output.txt").toFile())
            .start();
    HttpClient http = HttpClient.newHttpClient();
    String port = port();
    HttpRequest open =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/json/new?about:blank"))
            .PUT(HttpRequest.BodyPublishers.noBody())
            .build();
    JsonNode tab = json.readTree(http.send(open, BodyHandlers.ofString()).body());
    socket =
        http.newWebSocketBuilder()
            .buildAsync(
                URI.create(tab.get("webSocketDebuggerUrl").asString()),
                new WebSocket.Listener() {
                  @Override
                  public CompletionStage<?> onText(
                      WebSocket from, CharSequence data, boolean last) {
                    take(data, last);
                    from.request(1);
                    return null;
                  }
                })
            .get(PATIENCE, TimeUnit.SECONDS);
    for (String domain : List.of("Page", "Runtime", "Network", "Log")) {
      send(domain + ".enable", Map.of());
    }
  }

  private static Path program() {
    for (String folder : System.getenv("PATH").split(File.pathSeparator)) {
      for (String name : List.of("chromium", "chromium-browser", "google-chrome")) {
        Path path = Path.of(folder, name);
        if (Files.isExecutable(path)) {
          return path;
        }
      }
    }
    return fail("these tests need Chromium: apt-get install chromium");
  }

  /** The port that it chose, once it says so. */
  private String port() throws IOException, InterruptedException {
    Path file = profile.resolve("DevToolsActivePort");
    for (int i = 0; i < PATIENCE * 10; i++) {
      if (Files.exists(file) && !Files.readString(file).isBlank()) {
        return Files.readString(file).lines().findFirst().orElseThrow();
      }
      if (!process.isAlive()) {
        break;
      }
      Thread.sleep(100);
    }
    return fail("Chromium did not start: " + Files.readString(profile.resolve("output.txt")));
  }

  private void take(CharSequence data, boolean last) {
    incoming.append(data);
    if (last) {
      JsonNode message = json.readTree(incoming.toString());
      incoming.setLength(0);
      if (message.has("id")) {
        waiting.remove(message.get("id").asInt()).complete(message);
      } else {
        events.add(message);
      }
    }
  }

  /** Sends a command and waits for what comes of it. */
  JsonNode send(String method, Map<String, Object> parameters) throws Exception {
    int id = next.incrementAndGet();
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    waiting.put(id, answer);
    Map<String, Object> message = new LinkedHashMap<>();
    message.put("id", id);
    message.put("method", method);
    message.put("params", parameters);
    socket.sendText(json.writeValueAsString(message), true).get(PATIENCE, TimeUnit.SECONDS);
    JsonNode got = answer.get(PATIENCE, TimeUnit.SECONDS);
    if (got.has("error")) {
      fail(method + ": " + got.get("error"));
    }
    return got.get("result");
  }

  /** Opens a file and waits until it is there, and its first frame is drawn. */
  void open(Path file) throws Exception {
    events.clear();
    send("Page.navigate", Map.of("url", file.toUri().toString()));
    for (int i = 0; i < PATIENCE * 20; i++) {
      if (said("Page.loadEventFired").findAny().isPresent()) {
        return;
      }
      Thread.sleep(50);
    }
    fail("the page did not load");
  }

  /** Waits for what was asked for to be on the screen. */
  void settle() throws Exception {
    value("new Promise(r => requestAnimationFrame(() => requestAnimationFrame(() => r(1))))");
  }

  /** What an expression of the page comes to. */
  JsonNode value(String expression) throws Exception {
    JsonNode got =
        send(
            "Runtime.evaluate",
            Map.of("expression", expression, "returnByValue", true, "awaitPromise", true));
    if (got.has("exceptionDetails")) {
      fail(expression + ": " + got.get("exceptionDetails"));
    }
    return got.get("result").get("value");
  }

  /** What the page has told of one kind since it was opened. */
  Stream<JsonNode> said(String method) {
    return events.stream()
        .filter(e -> e.get("method").asString().equals(method))
        .map(e -> e.get("params"));
  }

  /** Addresses asked for since the page was opened. */
  List<String> requests() {
    return said("Network.requestWillBeSent")
        .map(p -> p.get("request").get("url").asString())
        .toList();
  }

  /** Everything that went wrong in the page, in its own words. */
  List<String> complaints() {
    List<String> out = new ArrayList<>();
    said("Runtime.exceptionThrown").forEach(p -> out.add(p.toString()));
    said("Runtime.consoleAPICalled").forEach(p -> out.add(p.toString()));
    said("Log.entryAdded").forEach(p -> out.add(p.toString()));
    return out;
  }

  /** A telephone held upright. */
  void phone(int width, int height) throws Exception {
    send(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", true));
    send("Emulation.setTouchEmulationEnabled", Map.of("enabled", true, "maxTouchPoints", 2));
  }

  /** A finger, or none when it is lifted. */
  void touch(String type, double... xy) throws Exception {
    List<Map<String, Object>> points = new ArrayList<>();
    for (int i = 0; i + 1 < xy.length; i += 2) {
      points.add(Map.of("x", xy[i], "y", xy[i + 1], "id", i / 2));
    }
    send("Input.dispatchTouchEvent", Map.of("type", type, "touchPoints", points));
  }

  /** Ends it and all it has started, and takes its files away. */
  void quit() throws Exception {
    socket.abort();
    // Its children write into the folder until they are gone too.
    List<ProcessHandle> children = process.descendants().toList();
    process.destroy();
    if (!process.waitFor(20, TimeUnit.SECONDS)) {
      process.destroyForcibly().waitFor();
    }
    for (ProcessHandle child : children) {
      child.destroyForcibly();
      child.onExit().get(20, TimeUnit.SECONDS);
    }
    try (Stream<Path> files = Files.walk(profile)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
