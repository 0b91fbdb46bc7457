package org.manubrium.store;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ArgumentsSource;

/**
 * A test that takes a fresh, empty {@link Database}: once on H2, and once on PostgreSQL in a schema of its own if the
 * environment variable or system property {@code MANUBRIUM_TEST_PG} holds a JDBC address. JUnit closes what it was given.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ParameterizedTest(name = "{0}")
@ArgumentsSource(FreshDatabases.class)
public @interface EachDatabase {}
