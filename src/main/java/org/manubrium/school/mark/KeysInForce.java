package org.manubrium.school.mark;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.manubrium.exchange.KeyJson;
import org.manubrium.marking.key.CompiledKey;
import org.manubrium.store.KeyCorrection;
import org.manubrium.store.Stores;

/** The keys that case versions are marked by: their own, or the newest correction. Each is read once while there is room. */
public final class KeysInForce {
    private static final int ROOM = 500;

    private record Name(long version, long correction) {}

    private final Map<Name, CompiledKey> read = new ConcurrentHashMap<>();

    public CompiledKey of(Stores stores, long version) {
        Optional<Long> correction = stores.keys().inForce(version);
        Name name = new Name(version, correction.orElse(0L));
        return Optional.ofNullable(read.get(name)).orElseGet(() -> {
            CompiledKey key = KeyJson.read(text(stores, version, correction));
            if (read.size() < ROOM) {
                read.put(name, key);
            }
            return key;
        });
    }

    private static String text(Stores stores, long version, Optional<Long> correction) {
        return correction
                .flatMap(id -> stores.keys().find(id))
                .map(KeyCorrection::compiledKey)
                .orElseGet(() -> stores.cases().version(version).orElseThrow().compiledKey());
    }
}
