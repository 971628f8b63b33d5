package headgate.runtime.child;

import headgate.api.head.ContinuousHead;
import headgate.api.head.SpotHead;
import headgate.api.head.ToolHead;
import headgate.runtime.answers.HeadFault;
import headgate.runtime.answers.HeadStage;
import headgate.runtime.pack.Version;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.pf4j.ClassLoadingStrategy;
import org.pf4j.JarPluginLoader;
import org.pf4j.JarPluginManager;
import org.pf4j.ManifestPluginDescriptorFinder;
import org.pf4j.Plugin;
import org.pf4j.PluginClassLoader;
import org.pf4j.PluginDescriptor;
import org.pf4j.PluginDescriptorFinder;
import org.pf4j.PluginFactory;
import org.pf4j.PluginLoader;
import org.pf4j.PluginManager;
import org.pf4j.PluginState;
import org.pf4j.PluginStatusProvider;

/**
 * Loads one head through the plugin host, with everything switched off that a head does not need: no plugin class, no
 * list of disabled plugins on disk, no descriptor but the manifest. The head's classes see the head API and the
 * platform, and nothing else of this process.
 */
final class HeadLoader {

    /** A head that cannot be had, with the fault that says why. */
    static final class NotLoaded extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient HeadFault fault;

        NotLoaded(HeadFault fault) {
            super(fault.sentence());
            this.fault = fault;
        }

        HeadFault fault() {
            return fault;
        }
    }

    private HeadLoader() {}

    /**
     * Makes a plugin host. Costs most of the time of loading and needs no head yet.
     *
     * @return the host
     */
    static PluginManager host() {
        Host host = new Host();
        host.setSystemVersion(Version.OF_API.toString());
        return host;
    }

    /**
     * Loads a head and makes its one instance.
     *
     * @param host a host that has loaded nothing
     * @param jar the clean copy
     * @return the head
     * @throws NotLoaded if there is none that can be used
     */
    static ToolHead load(PluginManager host, Path jar) throws NotLoaded {
        List<Class<?>> extensions;
        try {
            String id = host.loadPlugin(jar);
            if (host.startPlugin(id) != PluginState.STARTED) {
                throw noHead("the plugin host did not start it");
            }
            Thread.currentThread().setContextClassLoader(host.getPluginClassLoader(id));
            extensions = host.getExtensionClasses(id);
        } catch (RuntimeException | LinkageError e) {
            throw noHead(Throwables.type(e) + " " + Throwables.message(e));
        }
        if (extensions.size() != 1) {
            throw noHead(extensions.size() + " extensions could be loaded, one is needed");
        }
        return instance(extensions.get(0));
    }

    private static NotLoaded noHead(String reason) {
        return new NotLoaded(new HeadFault.NoHead(reason));
    }

    private static ToolHead instance(Class<?> type) throws NotLoaded {
        String name = type.getName();
        if (!ToolHead.class.isAssignableFrom(type)) {
            throw noHead("class " + name + " implements neither " + SpotHead.class.getName() + " nor "
                    + ContinuousHead.class.getName());
        }
        if (!Modifier.isPublic(type.getModifiers()) || Modifier.isAbstract(type.getModifiers())) {
            throw noHead("class " + name + " is not a public class that can be instantiated");
        }
        Constructor<?> constructor;
        try {
            constructor = type.getConstructor();
        } catch (NoSuchMethodException e) {
            throw noHead("class " + name + " has no public constructor without parameters");
        } catch (LinkageError e) {
            throw new NotLoaded(Throwables.fault(HeadStage.LOAD, e));
        }
        try {
            return (ToolHead) constructor.newInstance();
        } catch (InvocationTargetException e) {
            throw new NotLoaded(Throwables.fault(HeadStage.LOAD, e.getCause()));
        } catch (ExceptionInInitializerError e) {
            throw new NotLoaded(Throwables.fault(HeadStage.LOAD, e.getCause()));
        } catch (ReflectiveOperationException | RuntimeException | Error e) {
            throw new NotLoaded(Throwables.fault(HeadStage.LOAD, e));
        }
    }

    private static final class Host extends JarPluginManager {

        Host() {
            super(Path.of(""));
        }

        @Override
        protected PluginDescriptorFinder createPluginDescriptorFinder() {
            return new ManifestPluginDescriptorFinder();
        }

        @Override
        protected PluginStatusProvider createPluginStatusProvider() {
            return new NothingDisabled();
        }

        @Override
        protected PluginFactory createPluginFactory() {
            return wrapper -> new Plugin() {};
        }

        @Override
        protected PluginLoader createPluginLoader() {
            PluginManager manager = this;
            return new JarPluginLoader(manager) {
                @Override
                protected PluginClassLoader createPluginClassLoader(Path path, PluginDescriptor descriptor) {
                    // Parent first: a copy of a host class in the package could otherwise shadow the host's.
                    return new PluginClassLoader(manager, descriptor, new ApiOnly(), ClassLoadingStrategy.APD);
                }
            };
        }
    }

    private static final class NothingDisabled implements PluginStatusProvider {
        @Override
        public boolean isPluginDisabled(String pluginId) {
            return false;
        }

        @Override
        public void disablePlugin(String pluginId) {
            // Nothing asks for it, and a disabled plugin would be no head.
        }

        @Override
        public void enablePlugin(String pluginId) {
            // All are enabled.
        }
    }

    /** The parent of a head's class loader: the head API, the two types of the plugin host, the platform. */
    private static final class ApiOnly extends ClassLoader {

        private static final Set<String> HOST_TYPES = Set.of("org.pf4j.Extension", "org.pf4j.ExtensionPoint");

        ApiOnly() {
            super(ClassLoader.getPlatformClassLoader());
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            return name.startsWith("headgate.api.") || HOST_TYPES.contains(name)
                    ? ApiOnly.class.getClassLoader().loadClass(name)
                    : super.loadClass(name, resolve);
        }
    }
}
