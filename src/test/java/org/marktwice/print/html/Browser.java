package org.marktwice.print.html;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/** A headless Chromium with one page, spoken to by its own debugging protocol. */
final class Browser implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> NAMES =
            List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");
    /** Far more than anything asked here takes; a browser that hangs fails the test. */
    private static final int PATIENCE_S = 120;

    private static final String LISTENING = "DevTools listening on ";

    private final Process process;
    private final WebSocket socket;
    private final AtomicInteger ids = new AtomicInteger();
    private final Map<Integer, CompletableFuture<JsonNode>> asked = new ConcurrentHashMap<>();
    private final List<JsonNode> events = Collections.synchronizedList(new ArrayList<>());
    private volatile CompletableFuture<JsonNode> loaded = new CompletableFuture<>();
    private String session = "";

    private Browser(Process process, String address) throws Exception {
        this.process = process;
        this.socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(URI.create(address), new Listening())
                .get(PATIENCE_S, TimeUnit.SECONDS);
        String target = ask("Target.createTarget", Map.<String, Object>of("url", "about:blank"))
                .get("targetId")
                .asText();
        session = ask("Target.attachToTarget", Map.<String, Object>of("targetId", target, "flatten", true))
                .get("sessionId")
                .asText();
        for (String domain : List.of("Page", "Runtime", "Network", "Log"))
            ask(domain + ".enable", Map.<String, Object>of());
    }

    /** Where the browser is on this machine; empty where there is none. */
    static Optional<Path> installed() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** @param profile an empty folder for what a browser keeps */
    static Browser open(Path program, Path profile) throws Exception {
        Process process = new ProcessBuilder(
                        program.toString(),
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-dev-shm-usage",
                        "--disable-background-networking",
                        "--no-first-run",
                        "--force-color-profile=srgb",
                        "--hide-scrollbars",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "about:blank")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            return new Browser(process, address(process));
        } catch (Exception e) {
            process.destroyForcibly();
            throw e;
        }
    }

    private static String address(Process process) throws Exception {
        return CompletableFuture.supplyAsync(() -> {
                    try {
                        BufferedReader err = new BufferedReader(
                                new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8));
                        for (String line = err.readLine(); line != null; line = err.readLine()) {
                            if (line.startsWith(LISTENING)) {
                                drain(err);
                                return line.substring(LISTENING.length()).strip();
                            }
                        }
                        throw new IllegalStateException("the browser ended before it listened");
                    } catch (IOException e) {
                        throw new IllegalStateException(e);
                    }
                })
                .get(PATIENCE_S, TimeUnit.SECONDS);
    }

    /** So that the browser never waits for somebody to read what it complains of. */
    private static void drain(BufferedReader err) {
        Thread reader = new Thread(() -> err.lines().forEach(line -> {}), "a browser's complaints");
        reader.setDaemon(true);
        reader.start();
    }

    private JsonNode ask(String method, Map<String, ?> params) throws Exception {
        int id = ids.incrementAndGet();
        ObjectNode message = JSON.createObjectNode().put("id", id).put("method", method);
        message.set("params", JSON.valueToTree(params));
        if (!session.isEmpty()) message.put("sessionId", session);
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        asked.put(id, answer);
        socket.sendText(message.toString(), true).get(PATIENCE_S, TimeUnit.SECONDS);
        JsonNode got = answer.get(PATIENCE_S, TimeUnit.SECONDS);
        if (got.has("error")) throw new IllegalStateException(method + ": " + got.get("error"));
        return got.get("result");
    }

    /** Opens a file and waits until it is loaded. Only what happens from then on is told by {@link #events}. */
    void go(String url) throws Exception {
        loaded = new CompletableFuture<>();
        events.clear();
        ask("Page.navigate", Map.<String, Object>of("url", url));
        loaded.get(PATIENCE_S, TimeUnit.SECONDS);
    }

    /** What a script's expression comes to, once its promise is kept. */
    JsonNode evaluate(String expression) throws Exception {
        JsonNode result = ask(
                "Runtime.evaluate",
                Map.<String, Object>of("expression", expression, "awaitPromise", true, "returnByValue", true));
        if (result.has("exceptionDetails")) throw new IllegalStateException(result.toString());
        JsonNode value = result.get("result").get("value");
        return value == null ? JSON.nullNode() : value;
    }

    /** Waits until an expression holds: for what a page does once it has come to it. */
    void until(String expression) throws Exception {
        evaluate("new Promise(done => { const look = () => (" + expression
                + ") ? done() : setTimeout(look, 20); look(); })");
    }

    String text(String selector) throws Exception {
        return evaluate("document.querySelector('" + selector + "').textContent")
                .asText();
    }

    /** Presses a key as a person does; {@code shifted} with Shift held. */
    void key(String key, int code, boolean shifted) throws Exception {
        for (String type : List.of("rawKeyDown", "keyUp")) {
            ask(
                    "Input.dispatchKeyEvent",
                    Map.<String, Object>of(
                            "type",
                            type,
                            "key",
                            key,
                            "code",
                            key.equals(" ") ? "Space" : key,
                            "windowsVirtualKeyCode",
                            code,
                            "modifiers",
                            shifted ? 8 : 0));
        }
    }

    void click(String selector) throws Exception {
        JsonNode at = evaluate("(() => { const e = document.querySelector('" + selector
                + "'); e.scrollIntoView({block: 'center', behavior: 'instant'}); const r = e.getBoundingClientRect();"
                + " return [r.x + r.width / 2, r.y + r.height / 2]; })()");
        for (String type : List.of("mousePressed", "mouseReleased")) {
            ask(
                    "Input.dispatchMouseEvent",
                    Map.<String, Object>of(
                            "type",
                            type,
                            "x",
                            at.get(0).asDouble(),
                            "y",
                            at.get(1).asDouble(),
                            "button",
                            "left",
                            "clickCount",
                            1));
        }
    }

    void window(int width, int height, double scale) throws Exception {
        ask(
                "Emulation.setDeviceMetricsOverride",
                Map.<String, Object>of(
                        "width", width, "height", height, "deviceScaleFactor", scale, "mobile", width < 600));
    }

    void light(boolean dark) throws Exception {
        Map<String, String> scheme = Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light");
        ask("Emulation.setEmulatedMedia", Map.<String, Object>of("features", List.of(scheme)));
    }

    void scripts(boolean allowed) throws Exception {
        ask("Emulation.setScriptExecutionDisabled", Map.<String, Object>of("value", !allowed));
    }

    byte[] screenshot() throws Exception {
        return data(ask("Page.captureScreenshot", Map.<String, Object>of("format", "png")));
    }

    byte[] pdf() throws Exception {
        return data(ask("Page.printToPDF", Map.<String, Object>of("preferCSSPageSize", true, "printBackground", true)));
    }

    private static byte[] data(JsonNode result) {
        return Base64.getDecoder().decode(result.get("data").asText());
    }

    /** What was fetched beyond the page itself. */
    List<String> requests() {
        return events("Network.requestWillBeSent").stream()
                .map(e -> e.get("request").get("url").asText())
                .filter(url -> !url.startsWith("data:"))
                .skip(1)
                .toList();
    }

    /** Everything that the console would show. */
    List<String> complaints() {
        return Stream.of("Runtime.exceptionThrown", "Runtime.consoleAPICalled", "Log.entryAdded")
                .flatMap(m -> events(m).stream())
                .map(JsonNode::toString)
                .toList();
    }

    private List<JsonNode> events(String method) {
        synchronized (events) {
            return events.stream()
                    .filter(e -> e.get("method").asText().equals(method))
                    .map(e -> e.get("params"))
                    .toList();
        }
    }

    @Override
    public void close() throws Exception {
        // they write into the profile as long as they live
        List<ProcessHandle> helpers = process.descendants().toList();
        try {
            session = "";
            ask("Browser.close", Map.<String, Object>of());
        } catch (ExecutionException | TimeoutException | IllegalStateException e) {
            process.destroy();
        }
        if (!process.waitFor(20, TimeUnit.SECONDS)) process.destroyForcibly().waitFor();
        for (ProcessHandle helper : helpers) {
            helper.destroyForcibly();
            helper.onExit().get(PATIENCE_S, TimeUnit.SECONDS);
        }
    }

    /** Messages come in pieces; each whole one is an answer or an event. */
    private final class Listening implements WebSocket.Listener {
        private final StringBuilder piece = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
            piece.append(data);
            if (last) {
                String whole = piece.toString();
                piece.setLength(0);
                take(whole);
            }
            from.request(1);
            return CompletableFuture.completedStage(null);
        }

        private void take(String whole) {
            try {
                JsonNode message = JSON.readTree(whole);
                if (message.has("id")) {
                    CompletableFuture<JsonNode> answer =
                            asked.remove(message.get("id").asInt());
                    if (answer != null) answer.complete(message);
                    return;
                }
                events.add(message);
                if (message.get("method").asText().equals("Page.loadEventFired")) loaded.complete(message);
            } catch (JsonProcessingException e) {
                throw new IllegalStateException(e);
            }
        }

        @Override
        public void onError(WebSocket from, Throwable error) {
            asked.values().forEach(a -> a.completeExceptionally(error));
        }
    }
}
