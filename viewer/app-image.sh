#!/bin/sh
# Makes target/app/auricle, an app image with its own Java (jlink and jpackage of the JDK in use).
# Called by the Maven profile "app" with the name of the viewer's jar.
set -eu
jar=$1
java_home=${JAVA_HOME:-$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")}
cp "target/$jar" target/app-jars/
rm -rf target/app target/app-java
modules=java.base,java.desktop,java.logging,java.management,java.naming,java.net.http,java.scripting,java.sql,java.xml,jdk.unsupported,jdk.crypto.ec
"$java_home/bin/jlink" --add-modules "$modules" --strip-debug --no-man-pages --no-header-files --output target/app-java
target/app-java/bin/java -Xshare:dump >/dev/null # classes of Java ready to map: a quicker start
"$java_home/bin/jpackage" --type app-image --name auricle --input target/app-jars --main-jar "$jar" \
  --main-class auricle.viewer.app.Launcher --runtime-image target/app-java --dest target/app
