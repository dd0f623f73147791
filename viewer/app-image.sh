#!/bin/sh
# Makes target/app/auricle, an app image with its own Java and JavaFX (jlink and jpackage of the JDK in use).
# Called by the Maven profile "app" with the name of the viewer's jar.
set -eu
jar=$1
java_home=${JAVA_HOME:-$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")}
app=target/app/auricle
cp "target/$jar" target/app-jars/
rm -rf target/app target/app-java target/app-fx
mkdir target/app-fx
mv target/app-jars/javafx-*.jar target/app-fx/
modules=java.base,java.desktop,java.logging,java.management,java.naming,java.net.http,java.scripting,java.sql,java.xml,jdk.unsupported,jdk.crypto.ec,javafx.controls
"$java_home/bin/jlink" --module-path target/app-fx --add-modules "$modules" --strip-debug --no-man-pages --no-header-files --output target/app-java
target/app-java/bin/java -Xshare:dump >/dev/null # classes of Java ready to map: a quicker start
"$java_home/bin/jpackage" --type app-image --name auricle --input target/app-jars --main-jar "$jar" \
  --main-class auricle.viewer.app.Launcher --runtime-image target/app-java --dest target/app \
  --java-options -XX:+IgnoreUnrecognizedVMOptions \
  --java-options -XX:Tier4InvocationThreshold=50000 --java-options -XX:Tier4MinInvocationThreshold=6000 \
  --java-options -XX:Tier4CompileThreshold=100000 --java-options -XX:Tier4BackEdgeThreshold=400000

# Starts the app for a while, to see which classes a start needs: on a screen of its own where there can be one.
rehearse() { # rehearse JAVA-OPTION
  folder=$(mktemp -d)
  screen=$(command -v xvfb-run || true)
  JAVA_TOOL_OPTIONS="$1 -Dauricle.viewer.folder=$folder" ${screen:+$screen -a -s "-screen 0 1280x1024x24"} \
    sh -c '"$0" & app=$!; sleep 20; kill $app; wait $app || true' "$PWD/$app/bin/auricle" >/dev/null 2>&1 || true
  rm -rf "$folder"
}

# What a start needs, ready to map. Classes of Java and JavaFX go into the archive of its Java, which works wherever the app
# is moved to; those of the app into one beside it, which works where the app was made. Both can be done without.
if [ "$(uname)" = Linux ]; then
  rehearse "-XX:DumpLoadedClassList=$PWD/target/app-classes"
  if [ -s target/app-classes ]; then
    "$app/lib/runtime/bin/java" -Xshare:dump -XX:SharedClassListFile=target/app-classes >/dev/null 2>&1
    rehearse "-XX:ArchiveClassesAtExit=$PWD/$app/lib/app/auricle.jsa"
  fi
  if [ -s "$app/lib/app/auricle.jsa" ]; then
    printf 'java-options=-XX:SharedArchiveFile=$APPDIR/auricle.jsa\njava-options=-Xlog:cds=off,cds+dynamic=off,class+path=off\n' >>"$app/lib/app/auricle.cfg"
  fi
fi
